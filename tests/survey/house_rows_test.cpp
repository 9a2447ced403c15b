// Rows of the house as a whole, and what is told of rows that cannot be taken.
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/survey/survey.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/survey/noted_in_quarters.h"

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("Walls, diagonals, corners and level planes are rows, out and back") {
    const ReadResult read = house();
    const Layout layout = lay_out(*read.shell);
    const Record blank = with_house_to_measure(read.record, *read.shell, layout);
    CHECK(blank.walls.size() == layout.walls.size());
    CHECK(blank.corners.size() == layout.corners.size()); // NE is one of them already
    CHECK(blank.corners[0].name == "NE");
    CHECK(blank.diagonals.size() == 2); // of a rectangle
    const std::string csv = survey_csv(survey_table(blank, {false, true}));
    CHECK(read_survey(csv, *read.shell, read.record).problems.empty());

    const SurveyRead rows_of_house =
        rows("row,tag,length,from,to,walls,level,plane,lean_first,lean_second,lean_over,offset,read_from\r\n"
             "level,L1,,,,,,,,,,0.3.1,\r\n"
             "wall,A,16.2.1,,,,,,,,,,\r\n"
             "wall,B,12 ells,,,,,,,,,,inside\r\n"
             "diagonal,,20.1.3,NE,SW,,,,,,,,\r\n"
             "corner,NE,,,,A; B,-0.3.2,L1,0.1.2,0.0.1,8.0.0,,\r\n"
             "corner,SW,,,,C; D,,L9,,,,,\r\n");
    REQUIRE(rows_of_house.problems.size() == 1);
    CHECK(rows_of_house.problems[0].line == 4); // ells
    REQUIRE(rows_of_house.notices.size() == 1);
    CHECK(rows_of_house.notices[0].line == 7); // no plane L9
    const Merged all = merged(read.record, rows_of_house.record, false);
    CHECK(all.conflicts.empty());
    REQUIRE(all.record.walls.size() == 2);
    CHECK(all.record.walls[0].length.value == Length::inches(16 * 12 + 2.25));
    CHECK(all.record.walls[1].read_from == ReadFrom::inside);
    CHECK(all.record.planes.at(0).offset.written == "0.3.1");
    CHECK(all.record.diagonals.at(0).length.written == "20.1.3");
    REQUIRE(all.record.corners.size() == 2);
    CHECK(all.record.corners[0].level.written == "-0.3.2");
    CHECK(all.record.corners[0].lean_over.written == "8.0.0");
    CHECK(all.record.logs == read.record.logs);

    // what stands is told where it differs, and a wall stays read from inside where its row does not say
    const SurveyRead again = read_survey(
        "row,tag,length,from,to\r\nwall,A,16.3.0,,\r\nwall,B,12.0.0,,\r\ndiagonal,,20.2.0,SW,NE\r\n",
        *read.shell, all.record);
    const Merged kept = merged(all.record, again.record, false);
    REQUIRE(kept.conflicts.size() == 2);
    CHECK(kept.record.walls[1].length.written == "12.0.0");
    CHECK(kept.record.walls[1].read_from == ReadFrom::inside);
    CHECK(kept.record.walls[0].length.written == "16.2.1");
}

TEST_CASE("What goes with a row that cannot be taken is told, and a lost peg is a missing one") {
    const SurveyRead read = rows("tag,row,at,state\r\n"
                                 "A 1.1,peg,4.6.0,loose\r\n"
                                 "A 1.1,peg,8.6.0,lost\r\n");
    REQUIRE(read.notices.size() == 2); // and nobody says from which corner they lie
    const bool last = read.notices[0].message.find("not from which corner") != std::string::npos;
    CHECK_THAT(read.notices[last ? 1 : 0].message, ContainsSubstring("the whole row is left out") &&
                                                       ContainsSubstring("with it go at \"4.6.0\""));
    CHECK(read.not_taken == 1);
    REQUIRE(log_of(read.record, "A 1.1").pegs.size() == 1);
    CHECK(log_of(read.record, "A 1.1").pegs[0].state == PegState::missing);
}

TEST_CASE("The corner that places are told from is the document's where no row says it") {
    const std::string of_log = "tag,row,at,state,zero\r\nA 1.1,peg,8.6.0,missing,\r\n",
                      of_opening = "tag,row,near_at_sill,far_at_sill\r\nlight,opening,4.6.0,6.6.0\r\n";
    const std::string opening = "\n[[record.opening]]\nname = \"light\"\n";
    const auto told = [](const SurveyRead &read) {
        CHECK(read.problems.empty());
        return std::ranges::count_if(read.notices, [](const auto &notice) {
            return notice.message.find("not from which corner") != std::string::npos;
        });
    };
    const ReadResult without = recorded_house(noted + opening);
    CHECK(told(rows_into(without, of_log)) == 1);
    CHECK(told(rows_into(without, of_opening)) == 1);
    std::string with = noted + opening + "zero = \"NE\"\n";
    with.insert(with.find("round = 1"), "zero = \"NE\"\n");
    const ReadResult house = recorded_house(with);
    CHECK(told(rows_into(house, of_log)) == 0);
    CHECK(told(rows_into(house, of_opening)) == 0);
    const Merged both = merged(house.record, rows_into(house, of_log).record, false);
    CHECK(both.conflicts.empty());
    CHECK(log_of(both.record, "A 1.1").pegs.size() == 1);
    CHECK(log_of(both.record, "A 1.1").zero == "NE");
}

TEST_CASE("Many numbers without a unit are one warning, and hide nothing that is wrong") {
    std::string csv = "tag,row,wall,round,corner,height,width,what,from,to\r\n";
    for (int i = 1; i <= 60; ++i) {
        const std::string tag = "B " + std::to_string(i);
        csv += tag + ",log,B,1,,,,,,\r\n" + tag + ",end,,,NE,260,180,,,\r\n";
    }
    csv += "B 60,zone,,,,,,rotten,3 m,1 m\r\nB 60,end,,,NW,10 ells,,,,\r\n"; // lines 122 and 123
    const SurveyRead read = rows(csv);
    REQUIRE(read.problems.size() == 2);
    CHECK(read.problems[0].line == 122);
    CHECK(read.problems[1].line == 123);
    std::size_t no_unit = 0;
    for (const CsvProblem &notice : read.notices)
        if (notice.message.find("no unit") != std::string::npos) {
            ++no_unit;
            CHECK_THAT(notice.message, ContainsSubstring("120 numbers have no unit"));
        }
    CHECK(no_unit == 1);
    CHECK(read.record.logs.size() == 60);
}

TEST_CASE("In French a log that is left out is not left in place, and old names of columns are read") {
    Record record;
    record.logs.resize(1);
    record.logs[0].tag = "A 1.1";
    record.logs[0].decisions = {{Decision::leave_out, "", "", "", {}}};
    record.logs[0].ends.resize(1);
    record.logs[0].ends[0].corner = "NE";
    const std::string csv = survey_csv(survey_table(record, {true, false}));
    CHECK_THAT(csv, ContainsSubstring("ne pas reposer") && ContainsSubstring("angle") &&
                        !ContainsSubstring("laisser"));
    const auto decided = [](const std::string &word) {
        return rows("rep\u00e8re,ligne,quoi,coin\r\nA 1.1,d\u00e9cision," + word + ",\r\nA 1.1,bout,,NE\r\n");
    };
    for (const char *word : {"ne pas reposer", "\u00e9carter", "Ecarter", "leave out"}) {
        const SurveyRead read = decided(word);
        CHECK(read.problems.empty());
        CHECK(log_of(read.record, "A 1.1").decisions.at(0).what == Decision::leave_out);
        CHECK(log_of(read.record, "A 1.1").ends.at(0).corner == "NE");
    }
    CHECK(decided("laisser").problems.size() == 1); // in place, or out? it is asked
}

TEST_CASE("Openings are rows, out and back") {
    ReadResult read = house();
    read.shell->openings.clear();
    read.shell->openings.push_back({"light",
                                    OpeningKind::window,
                                    "A",
                                    Length::mm(1500),
                                    Length::mm(460),
                                    Length::mm(800),
                                    Length::mm(460),
                                    {}});
    read.shell->openings.push_back({"",
                                    OpeningKind::window,
                                    "C",
                                    Length::mm(1500),
                                    Length::mm(460),
                                    Length::mm(800),
                                    Length::mm(460),
                                    {}});
    const Record blank = with_house_to_measure(read.record, *read.shell, lay_out(*read.shell));
    REQUIRE(blank.openings.size() == 2);
    CHECK(blank.openings[0].name == "light");
    CHECK(blank.openings[0].wall == "A");
    CHECK(blank.openings[1].name == "window 1 in wall C");
    for (const bool french : {false, true}) {
        const std::string csv = survey_csv(survey_table(blank, {french, true}));
        const SurveyRead back = read_survey(csv, *read.shell, read.record);
        CHECK(back.problems.empty());
        CHECK(back.record.openings == blank.openings);
    }

    const SurveyRead filled =
        read_survey("row,tag,wall,zero,near_at_sill,near_at_head,far_at_sill,far_at_head,width,height,sill,"
                    "head,plane,round\r\n"
                    "opening,light,A,NE,4.11.1,4.11.2,7.6.3,,2.7.2,1.6.0,-1.9.0,-0.3.0,,\r\n"
                    "opening,window 1 in wall C,C,,five,,,,,,,,,2\r\n",
                    *read.shell, read.record);
    REQUIRE(filled.problems.size() == 2); // what is no length, and an opening has no round
    CHECK(filled.problems[0].line == 3);
    REQUIRE(filled.record.openings.size() == 2);
    const RecordedOpening &light = filled.record.openings[0];
    CHECK(light.zero == "NE");
    CHECK(light.near_at_head.value == Length::inches(4 * 12 + 11.5));
    CHECK(light.sill.value == Length::inches(-21));
    CHECK_FALSE(light.far_at_head.is_taken());
    const Merged all = merged(blank, filled.record, false);
    CHECK(all.conflicts.empty() == false); // the corner that it is measured from
    CHECK(all.record.openings[0].width.written == "2.7.2");
}

TEST_CASE("The head of the forms is a row, out and back, and tells how the other rows count") {
    const ReadResult read = house();
    Record record = read.record;
    record.by = "R. Hale", record.on = "3 May", record.notation.denominator = 4;
    const SurveyTable table = survey_table(record, {false, false});
    REQUIRE_FALSE(table.rows.empty());
    CHECK(table.rows[0][0] == "record");
    const SurveyTable french = survey_table(record, {true, true});
    CHECK(french.rows[0][0] == "relevé");
    for (const SurveyTable *each : {&table, &french}) {
        const SurveyRead back = read_survey(survey_csv(*each), *read.shell, {});
        CHECK(back.problems.empty());
        CHECK(back.record.by == "R. Hale");
        CHECK(back.record.on == "3 May");
        CHECK(back.record.notation.denominator == 4);
    }
    // A blank one has the row to be filled in.
    CHECK(survey_table({}, {false, true}).rows.at(0)[0] == "record");
    CHECK(survey_table({}, {false, false}).rows.empty());

    const SurveyRead eighths = read_survey("row,tag,denominator,by,wall,round,length\r\n"
                                           "record,,8,M. Orne,,,\r\nlog,a,,,A,1,3.10.1\r\n",
                                           *read.shell, {});
    REQUIRE(eighths.problems.empty());
    CHECK(eighths.record.logs.at(0).length.value == Length::inches(46.125)); // 3 ft 10 1/8 in
    const SurveyRead wrong =
        read_survey("row,tag,denominator,by\r\nrecord,,5,M. Orne\r\nrecord,,4,R. Hale\r\n", *read.shell, {});
    REQUIRE(wrong.problems.size() == 2); // a fifth of an inch, and a second head
    CHECK(wrong.problems[0].line == 2);
    CHECK(wrong.problems[1].line == 3);
    CHECK(wrong.record.by == "M. Orne");
    CHECK_FALSE(wrong.record.notation.denominator);
}

TEST_CASE("What a head says otherwise than the record is a conflict, and what it adds is taken") {
    const ReadResult read = house();
    Record into = read.record;
    into.by = "R. Hale", into.exactness.clear();
    const SurveyRead rows =
        read_survey("row,tag,by,exactness\r\nrecord,,M. Orne,to an eighth\r\n", *read.shell, into);
    REQUIRE(rows.problems.empty());
    const Merged kept = merged(into, rows.record, false);
    REQUIRE(kept.conflicts.size() == 1);
    CHECK(kept.conflicts[0].key == "by");
    CHECK(kept.record.by == "R. Hale");
    CHECK(kept.record.exactness == "to an eighth");
    CHECK(merged(into, rows.record, true).record.by == "M. Orne");
}

TEST_CASE("A timber of a floor is a row like a log, to be measured, out and back") {
    const Shell shell = floored();
    const Layout layout = lay_out(shell);
    const Record blank = with_logs_to_measure({}, layout);
    const auto first = std::ranges::find(blank.logs, "G-J01", &FoundLog::tag);
    REQUIRE(first != blank.logs.end());
    CHECK(first->place.timber == "G-J01");
    CHECK(first->place.wall.empty());
    CHECK_FALSE(first->place.round);
    REQUIRE(first->ends.size() == 2);
    CHECK(first->ends[0].corner != first->ends[1].corner);
    const auto timbers =
        std::ranges::count_if(blank.logs, [](const FoundLog &log) { return !log.place.timber.empty(); });
    CHECK(timbers == std::ssize(layout.timbers));

    const SurveyRead back = read_survey("row,tag,timber,length,species,what,from,to,zero,corner,height\r\n"
                                        "log,joist 1,G-J01,3.9 m,pine,,,,C,,\r\n"
                                        "end,joist 1,,,,,,,,A,180 mm\r\nend,joist 1,,,,,,,,C,175 mm\r\n"
                                        "zone,joist 1,,,,rotten,0,400 mm,,,\r\n"
                                        "decision,joist 1,,,,keep,,,,,\r\n",
                                        shell, {});
    REQUIRE(back.problems.empty());
    REQUIRE(back.record.logs.size() == 1);
    CHECK(back.record.logs[0].place.timber == "G-J01");
    CHECK(back.record.logs[0].zones.size() == 1);
    CHECK(with_logs_to_measure(back.record, layout).logs.size() == blank.logs.size());
    const SurveyRead again = read_survey(survey_csv(survey_table(back.record, {true, false})), shell, {});
    CHECK(again.problems.empty());
    CHECK(again.record.logs == back.record.logs);
}
