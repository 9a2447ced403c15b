// A record as rows of a table, out and back.
#include "kernel/csv/csv_rows.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/record/numbers.h"
#include "kernel/survey/survey.h"
#include "tests/document/any_statement.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/survey/noted_in_quarters.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

namespace {

/// Blanks at the ends of a cell are nobody's words, and spreadsheets lose them.
bool survives_cells(const SurveyTable &table) {
    return std::ranges::all_of(table.rows, [](const auto &row) {
        return std::ranges::all_of(row, [](const std::string &cell) { return cell == trimmed(cell); });
    });
}

/// A text of blanks says nothing, and no cell shows it.
Record any_record_for_rows() {
    Record record = any_record();
    for (FoundLog &log : record.logs)
        for (auto *texts : {&log.marks, &log.photographs, &log.scarfed_to})
            for (std::string &text : *texts)
                text = trimmed(text);
    for (FoundLog &log : record.logs)
        for (auto *texts : {&log.marks, &log.photographs, &log.scarfed_to})
            std::erase(*texts, "");
    for (RecordedCorner &corner : record.corners) {
        for (std::string &wall : corner.walls)
            wall = trimmed(wall);
        std::erase(corner.walls, "");
    }
    // what is known by nothing has no row
    std::erase_if(record.walls, [](const RecordedWall &wall) { return wall.wall.empty(); });
    std::erase_if(record.corners, [](const RecordedCorner &corner) { return corner.name.empty(); });
    std::erase_if(record.openings, [](const RecordedOpening &opening) { return opening.name.empty(); });
    std::erase_if(record.planes, [](const LevelPlane &plane) { return plane.name.empty(); });
    each_number(record, [](const NumberAt &, NotedLength &number) {
        number.by = trimmed(number.by), number.on = trimmed(number.on);
    });
    return record;
}

Record without_logs(Record record) {
    record.logs.clear();
    return record;
}

} // namespace

TEST_CASE("Any record becomes rows and the same record again, in English and in French") {
    CHECK(rc::check([] {
        const Record record = any_record_for_rows();
        if (record.logs.empty()) return; // a table without a row is told
        const Shell shell = plain_shell();
        for (const bool french : {false, true})
            for (const bool all : {false, true}) {
                const SurveyTable table = survey_table(record, {french, all});
                RC_PRE(survives_cells(table));
                const std::string csv = survey_csv(table);
                const SurveyRead read = read_survey(csv, shell, without_logs(record));
                for (const CsvProblem &problem : read.problems)
                    RC_FAIL(std::to_string(problem.line) + ": " + problem.message + "\n" + csv);
                const std::string again = survey_csv(survey_table(read.record, {french, all}));
                if (again != csv) RC_FAIL(csv + "\nbecame\n" + again);
                RC_ASSERT(read.record.logs == record.logs);
            }
    }));
}

TEST_CASE("Both ends of a log at openings of one name are told apart by the corner that they look to") {
    Shell shell = plain_shell();
    shell.openings = {window("A", 900, 300, 700, 400), window("A", 3200, 300, 700, 400)};
    shell.openings[0].name = shell.openings[1].name = "light";
    const Layout layout = lay_out(shell);
    const Record blank = with_logs_to_measure({}, layout);
    int between = 0;
    for (const FoundLog &log : blank.logs) {
        REQUIRE(log.ends.size() == 2);
        CHECK(log.ends[0].corner != log.ends[1].corner);
        if (log.ends[0].corner != "light (DA)") continue;
        CHECK(log.ends[1].corner == "light (AB)");
        ++between;
    }
    CHECK(between > 0);
}

TEST_CASE("Rows are read as people and their spreadsheets write them") {
    // A byte order mark, semicolons, Windows ends, a decimal comma, capitals; the unit in the header.
    const SurveyRead read =
        rows("\xef\xbb\xbfTAG;Row;Height (mm);Percent;what;faces\r\n"
             "A 1.1;;;;;\r\nA 1.1;Moisture;;18,5;;\r\nA 1.1;zone;;;Rotten;top; outside\r\n"
             "A 1.2;log;;;;\r\nA 1.2;station;230;;;\r\n");
    CHECK(read.problems.size() == 1); // the row whose list of faces was not put in quotes
    CHECK(log_of(read.record, "A 1.1").moistures.at(0).percent == 18.5);
    CHECK(log_of(read.record, "A 1.2").stations.at(0).height.value == Length::mm(230));
    const SurveyRead quoted = rows("tag,row,what,faces\r\nA 1.1,zone,ROTTEN,\"top; outside\"\r\n");
    CHECK(quoted.problems.empty());
    CHECK(log_of(quoted.record, "A 1.1").zones.at(0).faces ==
          std::vector<FoundFace>{FoundFace::top, FoundFace::outside});
    const SurveyRead latin = rows("rep\xe8re;ligne;quoi\r\nA 1.1;zone;pourrie\r\n"); // Windows-1252
    CHECK(latin.problems.empty());
    CHECK(log_of(latin.record, "A 1.1").zones.at(0).what == Soundness::rotten);
}

TEST_CASE("A number keeps what is said of it") {
    const SurveyRead read = rows("tag,row,corner,height\r\n"
                                 "A 1.1,end,NE,\"0.11.3 (contradicted; by R. Hale\\; his son; on 3 May)\"\r\n"
                                 "A 1.1,end,NW,0.10.1 (at the knot)\r\n");
    const FoundEnd &end = log_of(read.record, "A 1.1").ends.at(0);
    CHECK(end.height.written == "0.11.3");
    CHECK(end.height.certainty == Certainty::contradicted);
    CHECK(end.height.by == "R. Hale; his son");
    CHECK(end.height.on == "3 May");
    REQUIRE(read.problems.size() == 1); // what is in brackets is nothing that a number has
    CHECK(read.problems[0].line == 3);
    CHECK_THAT(read.problems[0].message, ContainsSubstring("height \"0.10.1 (at the knot)\""));
    CHECK(log_of(read.record, "A 1.1").ends.at(1).corner == "NW"); // the rest of its row is kept
}

TEST_CASE("What cannot be taken is told with its line and column, and the rest is kept") {
    const struct {
        const char *rows;
        int line;
        const char *message;
        bool all_of_it = false; ///< the row goes with the cell
    } cases[] = {
        {"A 1.1,peg,,,found,\r\nA 1.3,zone,,,,rotten\r\n", 3, "no log has the tag \"A 1.3\"; did you mean"},
        {"A 1.1,peg,,,found,\r\nA 1.2,log,2,,,\r\nA 1.2,log,3,,,\r\n", 4,
         "stands there twice, first in line 3"},
        {"A 1.1,peg,,,found,\r\n,peg,,,found,\r\n", 3, "tag is missing"},
        {"A 1.1,peg,,,found,\r\nA 1.1,pegs,,,found,\r\n", 3,
         "row \"pegs\" is not known; expected record, log, end"},
        {"A 1.1,peg,,,found,\r\nA 1.1,peg,7,,found,\r\n", 3, "round is nothing that a row \"peg\" has"},
        {"A 1.1,peg,,,found,\r\nA 1.1,peg,,,loose,\r\n", 3, "state \"loose\": ", true},
        {"A 1.1,peg,,,found,\r\nA 1.1,peg,,0.1.1,,\r\n", 3, "\"state\" is missing"},
        {"A 1.1,peg,,,found,\r\nA 1.2,log,0,,,\r\n", 3, "round \"0\": "},
        {"A 1.1,peg,,,found,\r\nA 1.2,log,1.5,,,\r\n", 3, "round \"1.5\": "},
        {"A 1.1,peg,,,found,\r\nA 1.1,peg,,3 ells,found,\r\n", 3, "diameter \"3 ells\": "},
        {"A 1.1,peg,,,found,\r\nA 1.1,zone,,,,firm\r\n", 3, "what \"firm\": ", true},
    };
    for (const auto &each : cases) {
        INFO(each.rows);
        const SurveyRead read = rows(std::string("tag,row,round,diameter,state,what\r\n") + each.rows);
        REQUIRE(read.problems.size() == 1);
        CHECK(read.problems[0].line == each.line);
        CHECK_THAT(read.problems[0].message, ContainsSubstring(each.message));
        CHECK(read.notices.size() == (each.all_of_it ? 1 : 0)); // a peg without its state says nothing
        CHECK(log_of(read.record, "A 1.1").pegs.at(0).state == PegState::found);
    }
    CHECK_THAT(rows("wall,round\r\nA,1\r\n").problems.at(0).message,
               ContainsSubstring("the column \"tag\" is missing"));
    CHECK(rows("\x00\x01\x02").problems.size() == 1);
}

TEST_CASE("Two records of one house are put together log by log, and what differs is told") {
    const Record before = house().record;
    const SurveyRead read = rows("tag,row,wall,round,length,corner,height,state,species\r\n"
                                 "A 1.1,log,A,1,16.2.3,,,,pine\r\n" // another length
                                 "A 1.1,end,,,,NE,0.11.2,,\r\n"     // as it stands
                                 "A 1.1,end,,,,NW,0.10.1,,\r\n"     // measured where it was proposed
                                 "A 1.1,peg,,,,,,broken,\r\n"
                                 "A 3.1,log,A,3,,,,,\r\n");
    REQUIRE(read.problems.empty());
    const Merged kept = merged(before, read.record, false);
    REQUIRE(kept.conflicts.size() == 1);
    CHECK(kept.conflicts[0].tag == "A 1.1");
    CHECK(kept.conflicts[0].key == "length");
    CHECK(kept.conflicts[0].stands == "16.2.1");
    CHECK(kept.conflicts[0].other == "16.2.3");
    CHECK(kept.logs == 1);
    CHECK(kept.values == 3); // species, a measured height, a peg
    const FoundLog &log = log_of(kept.record, "A 1.1");
    CHECK(log.length.written == "16.2.1");
    CHECK(log.species == "pine");
    CHECK(log.ends[1].height.written == "0.10.1");
    CHECK(log.ends[1].height.certainty == Certainty::measured);
    CHECK(log.pegs.size() == 1);
    CHECK(log_of(merged(before, read.record, true).record, "A 1.1").length.written == "16.2.3");
    const Merged again = merged(kept.record, read.record, false);
    CHECK(again.record == kept.record);
    CHECK(again.values == 0);
}

TEST_CASE("A record put into itself, or into none, changes nothing") {
    CHECK(rc::check([] {
        const Record record = any_record();
        const Merged itself = merged(record, record, false);
        RC_ASSERT(itself.record == record);
        RC_ASSERT(itself.conflicts.empty());
        RC_ASSERT(merged(without_logs(record), record, false).record == record);
    }));
}

TEST_CASE("Rows to fill in name every log of the walls with its two ends, and those that are found stay") {
    const ReadResult read = house();
    const Layout layout = lay_out(*read.shell);
    const Record all = with_logs_to_measure(read.record, layout);
    CHECK(all.logs[0] == read.record.logs[0]);
    for (const Piece &piece : layout.pieces) {
        if (!is_log_of(piece, piece.wall)) continue;
        const auto count = std::ranges::count_if(all.logs, [&](const FoundLog &log) {
            return log.place.wall == layout.walls[piece.wall].name && log.place.round == piece.round &&
                   (!log.place.piece || log.place.piece == piece.number);
        });
        INFO(piece.tag);
        CHECK(count == 1);
    }
    for (const FoundLog &log : all.logs) {
        if (log.tag.starts_with("A 1.")) continue;
        REQUIRE(log.ends.size() == 2);
        CHECK(log.ends[0].corner != log.ends[1].corner);
    }
    const std::string csv = survey_csv(survey_table(all, {false, true}));
    CHECK_THAT(csv,
               ContainsSubstring("end,B-01-1,,,") && ContainsSubstring("NE")); // the record's name for it
    CHECK(read_survey(csv, *read.shell, read.record).problems.empty());
}
