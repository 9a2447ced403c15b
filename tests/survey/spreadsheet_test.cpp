// A record as a sheet of a spreadsheet, out and back, and what people and their spreadsheets make of it.
#include "kernel/csv/csv_rows.h"
#include "kernel/layout/lay_out.h"
#include "kernel/survey/survey_sheet.h"
#include "tests/document/any_statement.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/survey/recorded.h"
#include "tests/xlsx/typed_sheet.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

namespace {

const std::string noted = R"(
[record]
denominator = 4
numbers_in = "in"

[[found]]
tag = "A 1.1"
wall = "A"
round = 1
length = "16.2.1"
end = [
  { corner = "DA", height = "0.9.2" },
  { corner = "AB", height = "0.9.1" }
]
)";

SurveyRead rows(const std::string &bytes) {
    return rows_into(recorded_house(noted), bytes);
}

std::string as_xlsx(const SurveyTable &table) {
    return survey_xlsx(table, "Tarnfold", 0);
}

bool survives_cells(const SurveyTable &table) {
    return std::ranges::all_of(table.rows, [](const auto &row) {
        return std::ranges::all_of(row, [](const std::string &cell) { return cell == trimmed(cell); });
    });
}

} // namespace

TEST_CASE("Any record becomes a sheet and the same rows again, in English and in French") {
    CHECK(rc::check([] {
        Record record = any_record();
        if (record.logs.empty()) return;
        // what is known by nothing has no row
        std::erase_if(record.walls, [](const RecordedWall &wall) { return wall.wall.empty(); });
        const Shell shell = plain_shell();
        for (const bool french : {false, true}) {
            const SurveyTable table = survey_table(record, {french, true});
            RC_PRE(survives_cells(table));
            Record context = record;
            context.logs.clear();
            const SurveyRead by_text = read_survey(survey_csv(table), shell, context),
                             by_sheet = read_survey(as_xlsx(table), shell, context);
            for (const CsvProblem &problem : by_sheet.problems)
                RC_FAIL(problem.message);
            RC_ASSERT(by_sheet.record.logs == by_text.record.logs);
            RC_ASSERT(by_sheet.rows == by_text.rows);
        }
    }));
}

TEST_CASE("Rows to fill in offer the words that a cell takes, and keep their tags in sight") {
    const Layout layout = lay_out(plain_shell());
    const Record blank = with_logs_to_measure({}, layout);
    for (const bool french : {false, true}) {
        const SheetTable sheet = survey_sheet(survey_table(blank, {french, true}));
        CHECK(sheet.stays == 2);
        CHECK(sheet.columns[0].name == (french ? "ligne" : "row"));
        REQUIRE_FALSE(sheet.choices.empty());
        CHECK(sheet.choices.back().column == 0);
        CHECK(sheet.choices.back().last_row >= sheet.rows.size()); // further rows too
        const auto bow_to = std::ranges::find_if(sheet.columns, [&](const SheetColumn &c) {
            return c.name == (french ? "cintrage_vers" : "bow_to");
        });
        REQUIRE(bow_to != sheet.columns.end());
        const auto choice = std::ranges::find(
            sheet.choices, static_cast<std::size_t>(bow_to - sheet.columns.begin()), &SheetChoice::column);
        REQUIRE(choice != sheet.choices.end());
        CHECK(choice->words.front() == (french ? "dehors" : "outside"));
        CHECK(sheet.rows[choice->first_row][0] == (french ? "bille" : "log"));
    }
}

TEST_CASE("What cannot be taken of a table is told with its line, and the rest is kept") {
    const struct {
        const char *what, *rows;
        int line;
        const char *message;
    } cases[] = {
        {"a log that does not exist", "end,A 9.9,,AB,0.9.1\r\nlog,A 1.1,pine,,\r\n", 2,
         "no log has the tag \"A 9.9\""},
        {"one tag twice", "log,A 1.1,pine,,\r\nlog,A 1.1,oak,,\r\n", 3,
         "stands there twice, first in line 2"},
        {"half a row", "log,A 1.1,pine\r\nend\r\n", 3, "tag is missing"},
        {"a row broken in two", "log,A 1.1,pine,,\r\nend,A 1.1,,\r\nAB,0.9.1\r\n", 3,
         "\"corner\" is missing"},
    };
    for (const auto &each : cases) {
        INFO(each.what);
        const SurveyRead read = rows(std::string("row,tag,species,corner,height\r\n") + each.rows);
        REQUIRE_FALSE(read.problems.empty());
        CHECK(read.problems[0].line == each.line);
        CHECK_THAT(read.problems[0].message, ContainsSubstring(each.message));
        REQUIRE(read.record.logs.size() == 1);
        CHECK(read.record.logs[0].species == "pine");
    }
}

TEST_CASE("A height ten times its neighbours is asked about and taken as it stands") {
    std::string csv = "row,tag,wall,round,corner,height\r\n";
    for (int i = 2; i < 8; ++i)
        csv += "log,A " + std::to_string(i) + ",A," + std::to_string(i) + ",,\r\nend,A " + std::to_string(i) +
               ",,,AB," + (i == 5 ? "9 1/2 in" : "9.5 mm") + "\r\n";
    const SurveyRead slip = rows(csv);
    CHECK(slip.problems.empty());
    REQUIRE_FALSE(slip.notices.empty());
    CHECK_THAT(slip.notices[0].message, ContainsSubstring("was it noted in another unit?"));
    const auto log = std::ranges::find(slip.record.logs, "A 5", &FoundLog::tag);
    REQUIRE(log != slip.record.logs.end());
    CHECK(log->ends.at(0).height.written == "9 1/2 in");
}

TEST_CASE("Semicolons, decimal commas, a byte-order mark, ends of Windows lines and Latin-1 are read") {
    for (const char *csv : {"row;tag;corner;height\r\nend;A 1.1;AB;9,25 in\r\n",
                            "\xef\xbb\xbfrow,tag,corner,height\r\nend,A 1.1,AB,\"9,25 in\"\r\n",
                            "row\ttag\tcorner\theight\rend\tA 1.1\tAB\t9,25 in\r",
                            "ligne;rep\xe8re;coin;hauteur\nbout;A 1.1;AB;9,25 in\n"}) {
        INFO(csv);
        const SurveyRead read = rows(csv);
        CHECK(read.problems.empty());
        REQUIRE(read.record.logs.size() == 1);
        CHECK(read.record.logs[0].ends.at(0).height.value == Length::inches(9.25));
    }
}

TEST_CASE("A file that is no spreadsheet is one problem, and nothing is taken") {
    const SurveyRead read = rows("PK\x03\x04 broken");
    REQUIRE(read.problems.size() == 1);
    CHECK_THAT(read.problems[0].message, ContainsSubstring("save it as XLSX again, or as CSV"));
    CHECK(read.record.logs.empty());
}

TEST_CASE(
    "A moisture that a spreadsheet keeps as a percentage is that percentage, also in CSV and in French") {
    using Cells = std::vector<TypedCell>;
    const std::string kept =
        typed_sheet({Cells{"row", "tag", "percent", "depth", "season"},
                     Cells{"moisture", "A 1.1", TypedNumber{0.31, "0%"}, "1 in", "summer"},
                     Cells{"moisture", "A 1.1", TypedNumber{0.185, "0.0%"}, "1 in", "summer"},
                     Cells{"moisture", "A 1.1", TypedNumber{22, ""}, "1 in", "summer"},
                     Cells{"moisture", "A 1.1", TypedNumber{0.185, "0%"}, "1 in", "summer"},
                     Cells{"moisture", "A 1.1", TypedNumber{0.19, ""}, "1 in", "summer"}});
    const SurveyRead read = rows(kept);
    CHECK(read.problems.empty());
    std::vector<double> percents;
    for (const MoistureReading &reading : read.record.logs.at(0).moistures)
        percents.push_back(reading.percent);
    CHECK(percents == std::vector<double>{31, 18.5, 22, 18.5, 0.19});
    REQUIRE(read.notices.size() == 2); // shows 19 %; a share of one that no format says to be one
    CHECK(read.notices[0].line == 5);
    CHECK_THAT(read.notices[0].message, ContainsSubstring("sheet \"sheet\", C5: the spreadsheet shows fewer "
                                                          "digits than it holds: 18.5 % is taken"));
    CHECK(read.notices[1].line == 6);
    CHECK_THAT(read.notices[1].message, ContainsSubstring("was it a share of one, and \"19\" meant?"));

    const SurveyRead text = rows("ligne;rep\u00e8re;pour_cent;profondeur;saison\n"
                                 "humidit\u00e9;A 1.1;31,5 %;1 in;\u00e9t\u00e9\n"
                                 "humidit\u00e9;A 1.1;%;1 in;\u00e9t\u00e9\n");
    REQUIRE(text.record.logs.at(0).moistures.size() == 1);
    CHECK(text.record.logs[0].moistures[0].percent == 31.5);
    CHECK(text.problems.size() == 1);
}

TEST_CASE("A percentage is no length: it is told with sheet, line and cell, and left out") {
    using Cells = std::vector<TypedCell>;
    const SurveyRead read = rows(typed_sheet(
        {Cells{"row", "tag", "corner", "height"}, Cells{"end", "A 1.1", "AB", TypedNumber{0.31, "0%"}}}));
    REQUIRE(read.problems.size() == 1);
    CHECK(read.problems[0].line == 2);
    CHECK_THAT(read.problems[0].message, ContainsSubstring("height \"31 %\""));
}

TEST_CASE(
    "A date of a spreadsheet comes in as the date where dates stand, and is told where it may be a slip") {
    using Cells = std::vector<TypedCell>;
    const TypedNumber day{46145, "dd/mm/yyyy"}, without_year{46145, "d-mmm"};
    const SurveyRead read = rows(typed_sheet(
        {Cells{"row", "tag", "on", "note", "corner", "height", "marks"}, Cells{"log", "A 1.1", day, day},
         Cells{"end", "A 1.1", "", "", "AB", day}, Cells{"test", "A 1.1", without_year, ""},
         Cells{"log", "A 2.1", "", "", "", "", without_year}}));
    REQUIRE(read.record.logs.size() == 2);
    const FoundLog &log = read.record.logs[0];
    CHECK(log.on == "2026-05-03");
    CHECK(log.note == "2026-05-03");
    REQUIRE(log.tests.size() == 1);
    CHECK(log.tests[0].on == "2026-05-03");
    for (const FoundEnd &end : log.ends)
        CHECK_FALSE(end.height.is_taken());
    CHECK(read.record.logs[1].marks.empty());
    std::vector<std::string> problems, notices;
    for (const CsvProblem &problem : read.problems)
        problems.push_back(problem.message);
    for (const CsvProblem &notice : read.notices)
        notices.push_back(notice.message);
    REQUIRE(problems.size() == 2);
    CHECK_THAT(problems[0], ContainsSubstring("sheet \"sheet\", F3: ") && ContainsSubstring("2026-05-03") &&
                                ContainsSubstring("left out"));
    CHECK_THAT(problems[1], ContainsSubstring("sheet \"sheet\", G5: "));
    REQUIRE(notices.size() == 2);
    CHECK_THAT(notices[0],
               ContainsSubstring("D2: the spreadsheet holds a date here, and 2026-05-03 is taken"));
    CHECK_THAT(notices[1], ContainsSubstring("C4: the spreadsheet shows only a part of this date"));
}
