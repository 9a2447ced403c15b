#include "exporters/lists/tables.h"
#include "kernel/layout/body.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <clocale>
#include <locale>
#include <map>

using namespace roundlay;

namespace {

CutList list_of(const Shell &shell) {
    const Layout layout = lay_out(shell);
    std::vector<double> volumes;
    for (const Model &model : layout.models)
        volumes.push_back(body_of(layout.pieces[static_cast<std::size_t>(model.pieces.front())]).volume);
    return collect_cut_list(shell, layout, volumes);
}

/// Rows by column key, as CSV spells the cells.
std::vector<std::map<std::string, std::string>> rows_of(const Table &table) {
    std::vector<std::map<std::string, std::string>> rows;
    for (const auto &cells : table.rows) {
        REQUIRE(cells.size() == table.columns.size());
        auto &row = rows.emplace_back();
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const Table one = {{{"x", ""}}, {{cells[i]}}};
            const std::string csv = to_csv(one);
            row[table.columns[i].key] = csv.substr(3, csv.size() - 5);
        }
    }
    return rows;
}

std::string all_bytes(const CutList &list) {
    std::string bytes;
    for (const Table &t :
         {model_table(list), piece_table(list), peg_table(list), order_table(list), total_table(list)})
        bytes += to_csv(t) + to_json(t) + to_text(t);
    return bytes;
}

/// A machine that writes 1.234,5.
struct CommaPoint : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

} // namespace

TEST_CASE("lengths stand in the shell's units and in millimetres") {
    Shell shell = test::plain_shell();
    const auto metric = rows_of(model_table(list_of(shell)));
    CHECK(metric[0].at("length") == "5000 mm");
    CHECK(metric[0].at("length_mm") == "5000");
    shell.units = UnitSystem::imperial;
    const auto imperial = rows_of(model_table(list_of(shell)));
    CHECK(imperial[0].at("length") == "\"16' 4 7/8\"\"\""); // 5000 mm = 16 ft 4.8504 in
    REQUIRE(imperial.size() == metric.size());
    for (std::size_t i = 0; i < metric.size(); ++i)
        for (const char *key :
             {"width_mm", "height_mm", "length_mm", "finished_volume_m3", "estimated_weight_high_kg"})
            CHECK(imperial[i].at(key) == metric[i].at(key));
}

TEST_CASE("quantities, tags and totals agree") {
    const CutList list = list_of(test::plain_shell());
    double quantity = 0;
    for (const auto &row : rows_of(model_table(list))) {
        quantity += std::stod(row.at("quantity"));
        const auto &tags = row.at("tags");
        CHECK(std::stod(row.at("quantity")) == 1 + std::count(tags.begin(), tags.end(), ' '));
        CHECK(tags.starts_with(row.at("piece")));
    }
    std::map<std::string, std::string> totals, notes;
    for (const auto &row : rows_of(total_table(list))) {
        totals[row.at("what") + " " + row.at("unit")] = row.at("amount");
        notes[row.at("what")] = row.at("note");
    }
    CHECK(std::stod(totals.at("pieces ")) == quantity);
    double kg = 0;
    for (const PieceRow &row : list.pieces)
        kg += row.stick.high_kg;
    CHECK(std::stod(totals.at("estimated high weight of all pieces kg")) == shown_weight(kg));
    CHECK_THAT(notes.at("weight basis"), ContainsSubstring("Eq. 4-13 and 4-14"));
    CHECK_THAT(notes.at("caution"),
               ContainsSubstring("no lift plan") && ContainsSubstring("licensed professional"));
}

TEST_CASE("each row with a weight carries what it rests on and the caution, in files and for machines") {
    const CutList list = list_of(test::plain_shell());
    for (const Table &table : {model_table(list), piece_table(list), order_table(list)})
        for (const auto &row : rows_of(table)) {
            CHECK_THAT(row.at("weight_note"),
                       ContainsSubstring("Eq. 4-13") && ContainsSubstring("no lift plan"));
            CHECK(std::stod(row.at("estimated_round_log_weight_high_kg")) >
                  std::stod(row.at("estimated_blank_weight_high_kg")));
        }
    CHECK_THAT(to_json(piece_table(list)), ContainsSubstring("no lift plan"));
}

TEST_CASE("weights are rounded up and left empty where they are not known") {
    Shell shell = test::plain_shell();
    const CutList list = list_of(shell);
    const auto rows = rows_of(piece_table(list));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CHECK(std::stod(rows[i].at("estimated_weight_high_kg")) >= list.pieces[i].stick.high_kg);
        CHECK(std::stod(rows[i].at("estimated_weight_high_lb")) * 0.45359237 >= list.pieces[i].stick.high_kg);
    }
    shell.wood.species = "unobtainium";
    for (const auto &row : rows_of(piece_table(list_of(shell))))
        CHECK(row.at("estimated_weight_high_kg").empty());
}

TEST_CASE("the machine's language changes no byte of a list") {
    const CutList list = list_of(test::plain_shell());
    const std::string before = all_bytes(list);
    const std::locale old = std::locale::global(std::locale(std::locale::classic(), new CommaPoint));
    const std::string after = all_bytes(list);
    std::locale::global(old);
    CHECK(after == before);
    CHECK(all_bytes(list_of(test::plain_shell())) == before);
}

TEST_CASE("the butt end is told for each piece and counted for equal ones") {
    const CutList list = list_of(test::plain_shell());
    std::map<std::string, int> left, all;
    for (const PieceRow &row : list.pieces) {
        left[row.like] += row.butt_left ? 1 : 0;
        ++all[row.like];
    }
    for (const auto &row : rows_of(model_table(list))) {
        const int l = left[row.at("piece")], n = all[row.at("piece")];
        const std::string both = "\"" + std::to_string(l) + " left, " + std::to_string(n - l) + " right\"";
        CHECK(row.at("butt_end") == (l == n ? "left" : l == 0 ? "right" : both));
    }
}

TEST_CASE("the bow of a measured log stands in the list of pieces") {
    Shell shell = test::plain_shell();
    OwnLog own;
    own.wall = "A";
    own.round = 2;
    own.bow = Length::mm(12);
    shell.own_logs = {own};
    for (const auto &row : rows_of(piece_table(list_of(shell))))
        CHECK(row.at("bow") == (row.at("tag") == "A-02-1" ? "12 mm" : ""));
}
