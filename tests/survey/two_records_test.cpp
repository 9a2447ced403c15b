// Rows that say more than once what is so, or otherwise: what becomes of them.
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/survey/survey.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"
#include "tests/survey/recorded.h"

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

namespace {

const std::string by_hale = R"(
[record]
denominator = 4

[[record.sheet]]
name = "2"
denominator = 16

[[found]]
tag = "A 1"
by = "R. Hale"
length = "16.2.1"
peg = [{ at = "4.6.0", state = "missing" }]
zone = [{ what = "rotten", from = "0", to = "1.8.2", depth = "0.2.2" }]

[[found]]
tag = "A 2"
)";

ReadResult house() {
    return recorded_house(by_hale);
}

SurveyRead rows(const std::string &csv) {
    return rows_into(house(), csv);
}

Merged with(const std::string &csv, bool replace = false) {
    const SurveyRead read = rows(csv);
    REQUIRE(read.problems.empty());
    return merged(house().record, read.record, replace);
}

} // namespace

TEST_CASE("A third end is left out by itself, and a blank row of an end gives way to the filled one") {
    const SurveyRead read = rows("row,tag,corner,height,species\r\n"
                                 "log,A 2,,,pine\r\nend,A 2,AB,,\r\nend,A 2,CD,,\r\n"
                                 "end,A 2,AB,0.11.2,\r\nend,A 2,NE,0.11.0,\r\nlog,A 1,,,oak\r\n");
    REQUIRE(read.problems.size() == 1);
    CHECK(read.problems[0].line == 6);
    CHECK_THAT(read.problems[0].message, ContainsSubstring("has 2 rows \"end\" already"));
    REQUIRE(read.record.logs.size() == 2);
    CHECK(read.record.logs[0].ends.at(0).height.written == "0.11.2");
    CHECK(read.record.logs[0].ends.at(1).corner == "CD");
    CHECK(read.record.logs[1].species == "oak");
    const SurveyRead twice = rows("row,tag,corner,height\r\nend,A 2,AB,0.11.2\r\nend,A 2,AB,0.11.0\r\n");
    REQUIRE(twice.problems.size() == 1);
    CHECK_THAT(twice.problems[0].message, ContainsSubstring("stands there twice, first in line 2"));
}

TEST_CASE("A third end of a log that has both is told, and the record stays one that can be read") {
    const Merged both = merged(recorded_house(R"(
[[found]]
tag = "A 2"
wall = "A"
round = 2
end = [ { corner = "AB", height = "280 mm" }, { corner = "front door", height = "270 mm" } ]
)")
                                   .record,
                               rows("row,tag,corner,height\r\nend,A 2,SE,290 mm\r\n").record, true);
    REQUIRE(both.conflicts.size() == 1);
    CHECK(both.conflicts[0].tag == "A 2");
    CHECK(both.conflicts[0].stands == "AB, front door");
    CHECK(both.conflicts[0].other == "SE");
    CHECK(both.record.logs[0].ends.size() == 2);
}

TEST_CASE("Nobody's numbers become another's") {
    const Merged both = with("row,tag,by,on,wind,length\r\nlog,A 1,M. Orne,4 May,0.0.1,16.2.1\r\n");
    const FoundLog &log = both.record.logs[0];
    CHECK(both.conflicts.empty()); // both measured 16.2.1
    CHECK(log.by == "R. Hale");
    CHECK(log.length.by.empty()); // as the log says: Hale's
    CHECK(log.wind.by == "M. Orne");
    CHECK(log.wind.on == "4 May");
    const Merged replaced = with("row,tag,by,length\r\nlog,A 1,M. Orne,16.2.3\r\n", true);
    CHECK(replaced.record.logs[0].length.by == "M. Orne");
    CHECK(replaced.record.logs[0].by == "R. Hale");
}

TEST_CASE("A peg or a zone that two people saw otherwise is a conflict, not two") {
    const Merged pegs = with("row,tag,at,state\r\npeg,A 1,4.6.0,found\r\npeg,A 1,8.0.0,found\r\n");
    REQUIRE(pegs.conflicts.size() == 1);
    CHECK(pegs.conflicts[0].of == "peg 4.6.0");
    CHECK(pegs.conflicts[0].key == "state");
    CHECK(pegs.record.logs[0].pegs.size() == 2);
    const Merged zones = with("row,tag,what,from,to,depth\r\nzone,A 1,rotten,0,1.8.2,0.3.0\r\n");
    REQUIRE(zones.conflicts.size() == 1);
    CHECK(zones.conflicts[0].key == "depth");
    CHECK(zones.record.logs[0].zones.size() == 1);
}

TEST_CASE("Numbers of another sheet would be read otherwise, and stay out") {
    const Merged other = with("row,tag,sheet,wind,species\r\nlog,A 1,2,0.0.3,pine\r\n");
    REQUIRE(other.conflicts.size() == 1);
    CHECK(other.conflicts[0].key == "sheet");
    CHECK(other.record.logs[0].species == "pine");
    CHECK_FALSE(other.record.logs[0].wind.is_taken());
    CHECK(other.record.logs[0].sheet.empty());
    CHECK(with("row,tag,sheet,wind\r\nlog,A 2,2,0.0.3\r\n").conflicts.empty()); // nothing stood there
}

TEST_CASE("What is only to be looked at takes nothing away") {
    const SurveyRead read = rows("row,tag,percent,depth,season\r\nmoisture,A 1,18,0.1.0,fall\r\n");
    REQUIRE(read.problems.size() == 1); // "autumn"
    REQUIRE(read.record.logs.size() == 1);
    CHECK(read.record.logs[0].moistures.size() == 1);
    for (const CsvProblem &notice : read.notices)
        CHECK(notice.message.find("left out") == std::string::npos);
    CHECK(rows("row,tag\r\n").problems.size() == 1); // no row at all
}

TEST_CASE(
    "A length or a height that is far off the log of the plan is asked about, and a log nobody measured "
    "is known as such") {
    const Shell shell = plain_shell(); // walls of 5 m and 4 m
    const SurveyRead read = read_survey("row,tag,wall,round,length\r\nlog,a,A,1,5 m\r\nlog,b,A,2,0.5 m\r\n"
                                        "log,c,B,1,14 m\r\nlog,d,Z,1,14 m\r\nlog,e,A,3,\r\n",
                                        shell, {});
    const auto doubts = doubtful_sizes(read.record, lay_out(shell));
    REQUIRE(doubts.size() == 2);
    CHECK(doubts[0].tag == "b");
    CHECK_THAT(english(doubts[0].what), ContainsSubstring("\"0.5 m\" is much less"));
    CHECK_THAT(english(doubts[0].what), ContainsSubstring("in wall A, round 2"));
    CHECK(doubts[1].tag == "c");
    CHECK(std::ranges::count_if(read.record.logs, is_measured) == 4);
    const SurveyRead high = read_survey("row,tag,wall,round,corner,at,height\r\nlog,a,A,3,,,\r\n"
                                        "end,a,,,DA,,210 mm\r\nend,a,,,AB,,90 mm\r\n"
                                        "station,a,,,,2 m,2 m\r\nlog,b,A,4,,,\r\nend,b,,,DA,,260 mm\r\n",
                                        shell, {}); // logs of 210 mm
    const auto heights = doubtful_sizes(high.record, lay_out(shell));
    REQUIRE(heights.size() == 2);
    CHECK(heights[0].tag == "a");
    CHECK_THAT(english(heights[0].what), ContainsSubstring("height \"90 mm\" is much less than the 210 mm") &&
                                             ContainsSubstring("in wall A, round 3"));
    CHECK_THAT(english(heights[1].what), ContainsSubstring("height \"2 m\" is much more"));
}

TEST_CASE(
    "A width far off the plan and a place that the log does not reach to are asked about at their rows") {
    const Shell shell = plain_shell(); // logs of 200 mm x 210 mm, walls of 5 m
    const SurveyRead read = read_survey("row,tag,wall,round,zero,corner,width,at,from,to,what,state\r\n"
                                        "log,a,A,3,DA,,,,,,,\r\nend,a,,,,DA,200 mm,,,,,\r\n"
                                        "end,a,,,,AB,9.8 mm,,,,,\r\npeg,a,,,,,,4700 mm,,,,found\r\n"
                                        "peg,a,,,,,,99999 mm,,,,found\r\n"
                                        "zone,a,,,,,,,0 mm,9000 mm,soft,\r\n",
                                        shell, {});
    REQUIRE(read.problems.empty());
    const auto doubts = doubtful_sizes(read.record, lay_out(shell));
    REQUIRE(doubts.size() == 3);
    const auto line_of = [&](const SurveyDoubt &doubt) { return read.lines.at({doubt.tag, doubt.of}); };
    CHECK_THAT(english(doubts[0].what), ContainsSubstring("width \"9.8 mm\" is much less than the 200 mm"));
    CHECK(line_of(doubts[0]) == 4);
    CHECK(line_of(doubts[1]) == 7); // its zone, then its pegs
    CHECK_THAT(english(doubts[2].what),
               ContainsSubstring("\"99999 mm\" lies past the end of the log, which is 5000 mm long"));
    CHECK(line_of(doubts[2]) == 6);
}

TEST_CASE("A place past the end of a log as it was taped is asked about at its row and column") {
    const Shell shell = plain_shell();
    const SurveyRead read = read_survey("row,tag,wall,round,length,zero,at,from,to,what,state\r\n"
                                        "log,a,A,3,4900 mm,DA,,,,,\r\n"
                                        "zone,a,,,,,,4950 mm,5100 mm,soft,\r\n"
                                        "zone,a,,,,,,4000 mm,4900 mm,soft,\r\n"
                                        "peg,a,,,,,4901 mm,,,,found\r\n"
                                        "log,loose,,,2 m,,,,,,\r\npeg,loose,,,,,2100 mm,,,,found\r\n",
                                        shell, {});
    REQUIRE(read.problems.empty());
    const auto doubts = doubtful_sizes(read.record, lay_out(shell));
    REQUIRE(doubts.size() == 3);
    const auto line_of = [&](const SurveyDoubt &doubt) { return read.lines.at({doubt.tag, doubt.of}); };
    CHECK(line_of(doubts[0]) == 3);
    CHECK(doubts[0].key == "to");
    CHECK_THAT(english(doubts[0].what),
               ContainsSubstring("\"5100 mm\" lies past the end of the log, whose length "
                                 "was measured \"4900 mm\""));
    CHECK(line_of(doubts[1]) == 5);
    CHECK(doubts[1].key == "at");
    CHECK(line_of(doubts[2]) == 7); // where it lies in the plan is not known
}

TEST_CASE("What the record asks after as noted in another unit is not asked after by the plan as well") {
    const Shell shell = plain_shell();
    std::string text = "row,tag,wall,round,corner,height\r\n";
    for (const char *round : {"1", "2", "3", "4"})
        text += std::string("log,a") + round + ",A," + round + ",,\r\nend,a" + round + ",,,DA," +
                (*round == '3' ? "9.6 mm" : "240 mm") + "\r\n";
    const SurveyRead read = read_survey(text, shell, {});
    CHECK(std::ranges::count_if(read.notices, [](const CsvProblem &notice) {
              return notice.message.find("was it noted in another unit?") != std::string::npos;
          }) == 1);
    CHECK(doubtful_sizes(read.record, lay_out(shell)).empty());
}

TEST_CASE("Rows of the house and of ends are known by the lines that they stand in") {
    const SurveyRead read = read_survey("row,tag,wall,round,corner,height,sill\r\nlog,a,A,3,,,\r\n"
                                        "end,a,,,DA,210 mm,\r\nend,a,,,AB,210 mm,\r\n"
                                        "opening,late window,A,,,,555 mm\r\n",
                                        plain_shell(), {});
    CHECK(read.lines.at({"a", ""}) == 2);
    CHECK(read.lines.at({"a", "end AB"}) == 4);
    CHECK(read.lines.at({"late window", ""}) == 5);
}
