#include "exporters/lists/down_table.h"
#include "exporters/lists/found_words.h"
#include "exporters/lists/shell_tables.h"
#include "exporters/lists/tables.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <clocale>
#include <cmath>
#include <locale>
#include <map>
#include <tuple>

using namespace roundlay;

namespace {

CutList list_of(const Shell &shell) {
    const Layout layout = lay_out(shell);
    Indexed<double, Model> volumes;
    for (const Model &model : layout.models)
        volumes.push_back(body_of(layout.pieces[model.pieces.front()]).volume);
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

TEST_CASE("volumes in files are good to a millilitre, so that sums agree, in cubic feet nearly as finely") {
    Shell shell = test::plain_shell();
    shell.units = UnitSystem::imperial;
    const CutList list = list_of(shell);
    const auto rows = rows_of(model_table(list));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double mm3 = list.models[i].stick.volume;
        for (const auto &[key, unit, decimals] :
             {std::tuple("finished_volume_m3", 1e9, 6),
              std::tuple("finished_volume_ft3", 304.8 * 304.8 * 304.8, 5)}) {
            const std::string &cell = rows[i].at(key);
            CHECK(cell.size() - cell.find('.') - 1 <=
                  static_cast<std::size_t>(decimals)); // no zeros at its end
            CHECK(std::stod(cell) == Approx(mm3 / unit).margin(0.5001 * std::pow(10, -decimals)).epsilon(0));
        }
    }
}

TEST_CASE("the sums of a wood that nobody knows hold no weight") {
    Shell shell = test::plain_shell();
    const auto weights = [&] {
        int rows = 0;
        for (const auto &row : rows_of(total_table(list_of(shell))))
            for (const auto &[key, cell] : row)
                rows += cell.find("weight of") != std::string::npos ? 1 : 0;
        return rows;
    };
    CHECK(weights() >= 8);
    shell.wood.species = "unobtainium";
    CHECK(weights() == 1); // which says that it is not known
    for (const auto &row : rows_of(total_table(list_of(shell))))
        if (row.at("what") == "weight of all pieces") {
            CHECK(row.at("amount").empty());
            CHECK_THAT(row.at("note"), ContainsSubstring("not known: no values are known of the wood of "));
        }
}

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
             {"width_mm", "height_mm", "length_mm", "finished_volume_m3", "estimated_weight_each_high_kg"})
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
    CHECK(std::stod(totals.at("estimated high weight of all pieces kg")) == shown_high_weight(kg));
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
            CHECK(std::stod(row.at("estimated_round_log_weight_each_high_kg")) >
                  std::stod(row.at("estimated_blank_weight_each_high_kg")));
        }
    CHECK_THAT(to_json(piece_table(list)), ContainsSubstring("no lift plan"));
}

TEST_CASE(
    "the box around a round stick has no weight of its own, and the stick's stands as the round log's") {
    Shell shell = test::round_shell();
    shell.logs.diameter = Length::mm(300);
    const CutList list = list_of(shell);
    for (const auto &table : {piece_table(list), model_table(list), order_table(list)})
        for (const auto &row : rows_of(table)) {
            CHECK(row.at("estimated_blank_weight_each_high_kg").empty());
            CHECK(row.at("estimated_blank_weight_each_low_lb").empty());
            CHECK(std::stod(row.at("estimated_round_log_weight_each_high_kg")) > 0);
        }
    for (const auto &row : rows_of(total_table(list)))
        CHECK(row.at("what") != "estimated high weight of its blank");
}

TEST_CASE("ranges of weights are rounded outward in every list, and left empty where they are not known") {
    Shell shell = test::plain_shell();
    const CutList list = list_of(shell);
    const auto holds = [](const auto &row, const std::string &what, double low_kg, double high_kg) {
        const auto shown = [&](const char *end) {
            return std::stod(row.at("estimated_" + what + "_each_" + end));
        };
        CHECK(shown("low_kg") <= low_kg);
        CHECK(shown("low_lb") * 0.45359237 <= low_kg);
        CHECK(shown("high_kg") >= high_kg);
        CHECK(shown("high_lb") * 0.45359237 >= high_kg);
    };
    const auto holds_stick = [&](const auto &row, const Stick &stick) {
        holds(row, "weight", stick.low_kg, stick.high_kg);
        holds(row, "blank_weight", stick.blank_low_kg, stick.blank_high_kg);
        holds(row, "round_log_weight", stick.log_low_kg, stick.log_high_kg);
    };
    const auto rows = rows_of(piece_table(list)), models = rows_of(model_table(list)),
               order = rows_of(order_table(list));
    for (std::size_t i = 0; i < rows.size(); ++i)
        holds_stick(rows[i], list.pieces[i].stick);
    for (std::size_t i = 0; i < models.size(); ++i)
        holds_stick(models[i], list.models[i].stick);
    for (std::size_t i = 0; i < order.size(); ++i) {
        holds(order[i], "blank_weight", list.order[i].blank_low_kg, list.order[i].blank_high_kg);
        holds(order[i], "round_log_weight", list.order[i].log_low_kg, list.order[i].log_high_kg);
    }
    double low = 0;
    for (const PieceRow &row : list.pieces)
        low += row.stick.low_kg;
    for (const auto &row : rows_of(total_table(list)))
        if (row.at("what") == "estimated low weight of all pieces") CHECK(std::stod(row.at("amount")) <= low);
    shell.wood.species = "unobtainium";
    for (const auto &row : rows_of(piece_table(list_of(shell))))
        CHECK(row.at("estimated_weight_each_high_kg").empty());
}

TEST_CASE("a least round is never said smaller than it is") {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        Shell shell = test::plain_shell();
        shell.units = units;
        for (const double thickness : {180.0, 181.3, 200.0, 211.7, 8.5 * 25.4}) {
            shell.thickness = Length::mm(thickness);
            const CutList list = list_of(shell);
            const auto rows = rows_of(order_table(list));
            REQUIRE_FALSE(rows.empty());
            for (std::size_t i = 0; i < rows.size(); ++i) {
                std::string said = rows[i].at("least_round");
                if (said.front() == '"')
                    said = said.substr(1, said.size() - 3); // an inch mark is doubled in CSV
                const auto length = parse_length(said);
                REQUIRE(std::holds_alternative<Length>(length));
                CHECK(std::get<Length>(length).mm() >= list.order[i].least_round - 1e-6);
                CHECK(std::get<Length>(length).mm() < list.order[i].least_round + 25.4 / 16);
                CHECK(std::stod(rows[i].at("least_round_mm")) >= list.order[i].least_round - 1e-8);
            }
        }
    }
}

TEST_CASE("the heads of lists of several sticks say that weights and board feet are of each") {
    const CutList list = list_of(test::plain_shell());
    for (const Table &table : {model_table(list), order_table(list)})
        for (const Column &column : table.columns)
            if (column.key.find("weight_") != std::string::npos ||
                column.key.find("board_feet") != std::string::npos)
                CHECK((column.key == "weight_note" || column.key.find("_each") != std::string::npos));
    CHECK_THAT(to_text(order_table(list)), ContainsSubstring("each blank kg to"));
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

TEST_CASE("lists for taking down and raising tell what was found of each log, and the pegs that are there") {
    const Shell shell = test::plain_shell();
    const Layout layout = lay_out(shell);
    Record record;
    record.logs.resize(1);
    FoundLog &log = record.logs[0];
    log.tag = "A-03-1", log.place = {"A", 3, {}};
    log.zones = {{Soundness::rotten, {}, {}, {FoundFace::under}, {}, ""}};
    log.pegs.resize(3);
    log.pegs[1].state = PegState::broken;
    const auto steps = taking_down(layout, bodies_of(layout));
    const Site site = site_of(record, shell, layout, bodies_of(layout));
    for (const Language language : {Language::english, Language::french}) {
        CutList list = collect_cut_list(shell, layout, volumes_of(bodies_of(layout)), language);
        CHECK_THAT(to_text(down_table(list, layout, site, steps)), !ContainsSubstring("as found"));
        tell_found(list, record, layout);
        const bool english = language == Language::english;
        for (const Table &table :
             {down_table(list, layout, site, steps), raising_table(list, layout, site), piece_table(list)})
            for (const auto &row : rows_of(table)) {
                const bool told = row.at("tag") == "A-03-1";
                CHECK(row.at("as_found") == (!told     ? ""
                                             : english ? "\"rotten, under; peg broken\""
                                                       : "\"pourri, dessous; cheville cass\u00e9e\""));
                CHECK(row.at("pegs_found") == (!told     ? ""
                                               : english ? "\"2 found, 1 broken\""
                                                         : "\"2 en place, 1 cass\u00e9e\""));
            }
        CHECK_THAT(to_text(down_table(list, layout, site, steps)),
                   ContainsSubstring(english ? "pegs as found" : "chevilles relev\u00e9es") &&
                       ContainsSubstring(english ? "rotten, under" : "pourri, dessous"));
    }
}

TEST_CASE("on a terminal numbers have the decimal mark of the language, in files a point") {
    const Table table = {{{"x", "x"}}, {{number(9.399, 3)}}};
    CHECK(to_text(table, Language::french) == "    x\n9,399\n");
    CHECK(to_text(table) == "    x\n9.399\n");
    CHECK(to_csv(table) == "x\r\n9.399\r\n");
}

TEST_CASE("the list of floors follows the shell's units, and says beside stresses that none is known to be "
          "allowed") {
    Shell shell = test::plain_shell();
    Floor floor;
    floor.name = "G", floor.from = "A", floor.to = "C";
    floor.level = Length::mm(560);
    floor.bearing = Length::mm(80);
    floor.live_load = 1.9;
    shell.floors = {floor};
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(layout.timbers.empty());
    const Table metric = floor_table(shell, layout);
    shell.units = UnitSystem::imperial;
    const Table imperial = floor_table(shell, layout);
    CHECK_THAT(to_text(metric), ContainsSubstring("live N/mm") && ContainsSubstring("bending MPa") &&
                                    !ContainsSubstring("psi"));
    CHECK_THAT(to_text(imperial), ContainsSubstring("live lb/ft") && ContainsSubstring("bends in") &&
                                      ContainsSubstring("bending psi") && !ContainsSubstring("MPa") &&
                                      !ContainsSubstring("N/mm"));
    const auto in_mm = rows_of(metric), in_inches = rows_of(imperial);
    for (std::size_t i = 0; i < in_mm.size(); ++i) {
        // 1 lb/ft = 14.5939 N/m, 1 psi = 6894.757 Pa (NIST SP 811, appendix B.8, from memory)
        const auto value = [&](const auto &rows, const char *key) { return std::stod(rows[i].at(key)); };
        CHECK(value(in_inches, "live_lb_per_ft") * 0.0145939 ==
              Approx(value(in_mm, "live_n_per_mm")).margin(0.002));
        CHECK(value(in_inches, "bending_psi") * 0.006894757 ==
              Approx(value(in_mm, "bending_mpa")).margin(0.004));
        CHECK(value(in_inches, "live_deflection_in") * 25.4 ==
              Approx(value(in_mm, "live_deflection_mm")).margin(0.07));
        CHECK_THAT(in_mm[i].at("allowable"), ContainsSubstring("a licensed person judges"));
        CHECK_THAT(in_mm[i].at("basis"), ContainsSubstring("No allowable stress is published"));
    }
}

TEST_CASE("the tops of round logs in the list of seams are those of the wood") {
    for (const Shell &shell : {test::round_shell(), test::plain_shell()}) {
        double top = 0;
        for (const auto &row : rows_of(seam_table(shell)))
            top = std::max(top, std::stod(row.at("top_left_mm")));
        CHECK(top == Approx(standing_in_all(lay_out(shell)).highest).margin(0.01));
    }
}
