// Tables as XLSX and back, and bytes that are none.
#include "kernel/xlsx/number_looks.h"
#include "kernel/xlsx/read_xlsx.h"
#include "kernel/xlsx/write_xlsx.h"
#include "tests/support/catch.h"
#include "tests/xlsx/typed_sheet.h"

#include <rapidcheck.h>

#include <random>

using namespace roundlay;

namespace {

SheetTable table_of(const std::vector<std::vector<std::string>> &rows) {
    SheetTable table;
    table.name = "logs";
    table.columns = {{"tag"}, {"height"}, {"count", 12, true}};
    table.rows = rows;
    return table;
}

std::vector<ReadSheet> read(const std::string &bytes) {
    auto sheets = read_xlsx(bytes);
    REQUIRE(std::holds_alternative<std::vector<ReadSheet>>(sheets));
    return std::get<std::vector<ReadSheet>>(std::move(sheets));
}

std::string refused(std::string_view bytes) {
    const auto sheets = read_xlsx(bytes);
    return std::holds_alternative<std::string>(sheets) ? std::get<std::string>(sheets) : "";
}

/// One number in cell A2.
std::string under_heading(double number, const char *format) {
    const std::vector<test::TypedCell> heading{std::string("x")}, cell{test::TypedNumber{number, format}};
    return test::typed_sheet({heading, cell});
}

const std::string sample = xlsx_of({table_of({{"A 1.1", "3.10.1", "46.25"}, {"é < & \"", "3.10", "3.1"}})},
                                   "Tarnfold", 1'000'000'000);

} // namespace

TEST_CASE("What is written as XLSX is read back as it was written, texts as texts and numbers as numbers") {
    const auto sheets = read(sample);
    REQUIRE(sheets.size() == 1);
    CHECK(sheets[0].name == "logs");
    CHECK(sheets[0].remarks.empty());
    REQUIRE(sheets[0].rows.rows.size() == 3);
    CHECK(sheets[0].rows.rows[0].cells == std::vector<std::string>{"tag", "height", "count"});
    CHECK(sheets[0].rows.rows[1].cells == std::vector<std::string>{"A 1.1", "3.10.1", "46.25"});
    CHECK(sheets[0].rows.rows[2].cells == std::vector<std::string>{"é < & \"", "3.10", "3.1"});
    CHECK(sheets[0].rows.rows[2].line == 3);
    REQUIRE(sheets[0].one_decimal.size() == 1); // the text 3.10 is told by its letters, the number is not
    CHECK(sheets[0].one_decimal[0].cell == "C3");
    CHECK(xlsx_of({table_of({{"A 1.1", "3.10.1", "46.25"}, {"é < & \"", "3.10", "3.1"}})}, "Tarnfold",
                  1'000'000'000) == sample);
}

TEST_CASE("Any table survives XLSX") {
    CHECK(rc::check([] {
        const auto letters =
            rc::gen::container<std::string>(rc::gen::elementOf(std::string("aZ09 .,;'\"<>&#\n")));
        const auto rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
            rc::gen::container<std::vector<std::string>>(2, letters));
        const auto sheets = read(xlsx_of({table_of(rows)}, "t", 0));
        std::size_t at = 1;
        for (std::size_t r = 0; r < rows.size(); ++r) {
            auto cells = rows[r];
            if (trimmed(cells[0]).empty() && trimmed(cells[1]).empty()) continue; // says nothing
            while (cells.back().empty())
                cells.pop_back();
            RC_ASSERT(at < sheets.at(0).rows.rows.size());
            RC_ASSERT(sheets[0].rows.rows[at].cells == cells);
            RC_ASSERT(sheets[0].rows.rows[at].line == static_cast<int>(r) + 2);
            ++at;
        }
        RC_ASSERT(sheets.at(0).rows.rows.size() == at);
    }));
}

TEST_CASE("A percentage comes with its sign and all its digits, as it is shown, not as it is kept") {
    const struct {
        double kept;
        const char *format, *read;
        bool doubted;
    } cases[] = {
        {0.31, "0%", "31 %", false},
        {0.07, "0%", "7 %", false}, // 7.000000000000001 where it is multiplied
        {0.315, "0.0%", "31.5 %", false},
        {0.315, "0%", "31.5 %", true}, // shows 32 %
        {1.1, "0.00%", "110 %", false},
        {31, "0%", "3100 %", false},
        {-0.05, "0%;[Red]-0%", "-5 %", false},
        {0, "0 %", "0 %", false},
        {0.31, "0.00", "0.31", false},
        {0.31, "0.0\"%\"", "0.31", false}, // a sign in quotes is a mere letter
        {0.31, "", "0.31", false},
    };
    for (const auto &each : cases) {
        INFO(each.kept << " as " << each.format);
        const auto sheets = read(under_heading(each.kept, each.format));
        REQUIRE(sheets.at(0).rows.rows.size() == 2);
        CHECK(sheets[0].rows.rows[1].cells[0] == each.read);
        CHECK(sheets[0].remarks.empty());
        REQUIRE(sheets[0].doubts.size() == (each.doubted ? 1 : 0));
        if (each.doubted) CHECK(sheets[0].doubts[0].cell == "A2");
    }
}

TEST_CASE("A date comes by ISO 8601, and a time of day is told and left out") {
    const struct {
        double kept;
        const char *format, *read;
        bool whole;
    } cases[] = {
        {46145, "yyyy-mm-dd", "2026-05-03", true},
        {46145, "dd/mm/yyyy", "2026-05-03", true},
        {46145, "[$-40C]d mmmm yyyy;@", "2026-05-03", true},
        {46145, "d-mmm", "2026-05-03", false},
        {46145, "mmm yy", "2026-05-03", false},
        {46145.5625, "dd/mm/yy hh:mm", "2026-05-03T13:30", true},
        {1, "yyyy-mm-dd", "1900-01-01", true},
        {59, "yyyy-mm-dd", "1900-02-28", true},
        {61, "yyyy-mm-dd", "1900-03-01", true},
    };
    for (const auto &each : cases) {
        INFO(each.kept << " as " << each.format);
        const auto sheets = read(under_heading(each.kept, each.format));
        REQUIRE(sheets.at(0).rows.rows.size() == 2);
        CHECK(sheets[0].rows.rows[1].cells[0] == each.read);
        REQUIRE(sheets[0].dates.size() == 1);
        CHECK(sheets[0].dates[0].whole == each.whole);
        CHECK(sheets[0].dates[0].cell == "A2");
    }
    for (const auto &[kept, format] :
         {std::pair{0.5625, "hh:mm"}, std::pair{1.25, "[h]:mm"}, std::pair{0.01, "mm:ss"},
          std::pair{60.0, "yyyy-mm-dd"}, std::pair{-3.0, "yyyy-mm-dd"}}) {
        INFO(kept << " as " << format);
        const auto sheets = read(under_heading(kept, format));
        REQUIRE(sheets.at(0).remarks.size() == 1);
        CHECK(sheets[0].remarks[0].cell == "A2");
        CHECK_THAT(sheets[0].remarks[0].message, ContainsSubstring("made a date or a time"));
        CHECK(sheets[0].rows.rows.size() == 1);
    }
}

TEST_CASE("Days are counted from 1900 or from 1904, as the workbook says") {
    CHECK(iso_date(46145, false) == "2026-05-03");
    CHECK(iso_date(44683, true) == "2026-05-03"); // 1462 days later
    CHECK(iso_date(1, true) == "1904-01-02");
    CHECK(iso_date(2958465, false) == "9999-12-31");
    CHECK_FALSE(iso_date(2958466, false));
    CHECK_FALSE(iso_date(0.5, false));
    CHECK(iso_date(46144.9999999, false) == "2026-05-03"); // to the second
}

TEST_CASE("Bytes that are no XLSX are refused with what to do") {
    CHECK_THAT(refused(""), ContainsSubstring("no XLSX file"));
    CHECK_THAT(refused("PK\x03\x04 and no more"), ContainsSubstring("damaged"));
    CHECK_THAT(refused("\xD0\xCF\x11\xE0 old"), ContainsSubstring("of the old kind, or one with a password"));
    CHECK_THAT(refused(std::string_view(sample).substr(0, sample.size() / 2)), ContainsSubstring("damaged"));
    CHECK(looks_like_spreadsheet(sample));
    CHECK(looks_like_spreadsheet("\xD0\xCF\x11\xE0 old"));
    CHECK_FALSE(looks_like_spreadsheet("row,tag\n"));
}

TEST_CASE("No damage to a file ends the program") {
    std::mt19937 random(7);
    int refusals = 0;
    for (int i = 0; i < 3000; ++i) {
        std::string bytes = sample;
        for (int k = 0; k < 1 + i % 5; ++k)
            bytes[random() % bytes.size()] = static_cast<char>(random());
        refusals += refused(bytes).empty() ? 0 : 1;
    }
    CHECK(refusals > 300); // else nothing was damaged where it matters
}

TEST_CASE("Cells are called as spreadsheets call them") {
    CHECK(cell_name(0, 0) == "A1");
    CHECK(cell_name(6, 25) == "Z7");
    CHECK(cell_name(6, 26) == "AA7");
    CHECK(cell_name(0, 701) == "ZZ1");
    CHECK(cell_name(0, 702) == "AAA1");
}
