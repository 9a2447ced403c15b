#include "kernel/record/check_record.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

using namespace roundlay;

namespace {

NotedLength noted(const char *written) {
    return {.written = written};
}

FoundLog log_of(const std::string &tag, const std::string &wall, int round) {
    FoundLog log;
    log.tag = tag;
    log.place = {wall, round, {}};
    log.length = noted("16.2.1");
    log.between_shoulders = noted("14.6.0");
    log.ends = {{.corner = "NE", .height = noted("0.11.2"), .width = noted("0.6.3")},
                {.corner = "NW", .height = noted("0.9.1"), .width = noted("0.6.1")}};
    return log;
}

/// Two walls of three logs, in quarters of an inch.
Record small_record() {
    Record record;
    record.notation.denominator = 4;
    for (const char *wall : {"A", "B"})
        for (int round = 1; round <= 3; ++round)
            record.logs.push_back(log_of(std::string(wall) + " 1." + std::to_string(round), wall, round));
    return record;
}

std::vector<RecordProblem> all_of(Record &record) {
    auto problems = read_numbers(record);
    for (RecordProblem &each : contradictions(record))
        problems.push_back(std::move(each));
    return problems;
}

struct Case {
    const char *what;
    std::function<void(Record &)> make;
    bool refused;
    const char *path, *sentence;
};

const std::vector<Case> cases{
    {"an impossible note", [](Record &r) { r.logs[1].ends[0].height = noted("0.12.1"); }, true,
     "found[1].end[0].height", "the second field of 0.12.1 is inches and not under 12"},
    {"an open note", [](Record &r) { r.logs[1].ends[0].height = noted("0.10"); }, false,
     "found[1].end[0].height", "0.10 has two fields and can be feet.inches or decimal feet"},
    {"no denominator",
     [](Record &r) {
         r.sheets = {{"2", {}, "", ""}}, r.sheets[0].notation.denominator = 12;
     },
     true, "record.sheet[0].denominator", "a sheet counts quarters, eighths or sixteenths of an inch"},
    {"a height below nothing", [](Record &r) { r.logs[0].ends[1].height = noted("-0.9.1"); }, true,
     "found[0].end[1].height", "-0.9.1 is not over 0 and up to 2000 mm"},
    {"a hill", [](Record &r) { r.corners = {{.name = "NE", .level = noted("400.0.0")}}; }, true,
     "record.corner[0].level", "400.0.0 is over 100000 mm up or down"},
    {"a log longer than a street", [](Record &r) { r.logs[0].length = noted("400.0.0"); }, true,
     "found[0].length", "400.0.0 is not from 0 to 100000 mm"},
    {"one tag twice", [](Record &r) { r.logs[4].tag = "A 1.2"; }, true, "found[4].tag",
     "two logs have the tag A 1.2"},
    {"no tag", [](Record &r) { r.logs[4].tag = ""; }, true, "found[4].tag", "a log has no tag"},
    {"a log that is not there", [](Record &r) { r.logs[2].replaces = "A 1.9"; }, true, "found[2].replaces",
     "no log of the record has the tag A 1.9"},
    {"one scarfed to itself", [](Record &r) { r.logs[2].scarfed_to = {"A 1.3"}; }, true,
     "found[2].scarfed_to", "log A 1.3 names itself"},
    {"two that replace one another",
     [](Record &r) {
         r.logs[0].replaces = "A 1.2", r.logs[1].replaces = "A 1.3", r.logs[2].replaces = "A 1.1";
     },
     true, "found[0].replaces", "log A 1.1 replaces itself by way of others"},
    {"a lonely piece", [](Record &r) { r.logs[3].cut_from = "B 7"; }, false, "found[3].cut_from",
     "no other log says that it was cut from B 7"},
    {"a place taken twice",
     [](Record &r) {
         r.logs[3].place = {"A", 1, {}};
     },
     false, "found[3]", "log B 1.1 lies where log A 1.1 lies, in wall A, round 1"},
    {"both ends alike", [](Record &r) { r.logs[0].ends[1].corner = "NE"; }, true, "found[0].end[1].corner",
     "both ends of the log are in corner NE"},
    {"a butt elsewhere", [](Record &r) { r.logs[0].butt = "SE"; }, false, "found[0].butt",
     "no end of the log lies in corner SE"},
    {"an unknown sheet", [](Record &r) { r.logs[0].sheet = "7"; }, false, "found[0].sheet",
     "no sheet of the record is called 7"},
    {"an unknown plane", [](Record &r) { r.logs[0].ends[0].plane = "L2"; }, false, "found[0].end[0].plane",
     "no level plane of the record is called L2"},
    {"two planes of one name",
     [](Record &r) {
         r.planes = {{"L1", {}, "", ""}, {"L1", noted("1.0.0"), "", ""}};
     },
     true, "record.level[1].name", "L1 is stated twice"},
    {"longer between shoulders", [](Record &r) { r.logs[0].between_shoulders = noted("16.3.0"); }, false,
     "found[0].between_shoulders", "16.3.0 between shoulders is more than the 16.2.1 over all"},
    {"jambs the other way about",
     [](Record &r) {
         r.openings = {
             {.name = "light", .zero = "NE", .near_at_sill = noted("5.0.0"), .far_at_sill = noted("3.0.0")}};
     },
     false, "record.opening[0].far_at_sill",
     "the jamb at 3.0.0 does not stand further from the corner than the one at 5.0.0"},
    {"a head under its sill",
     [](Record &r) { r.openings = {{.name = "light", .sill = noted("1.0.0"), .head = noted("-1.0.0")}}; },
     false, "record.opening[0].head", "the head at -1.0.0 does not lie over the sill at 1.0.0"},
    {"two openings of one name",
     [](Record &r) {
         r.openings = {{.name = "light"}, {.name = "light"}};
     },
     true, "record.opening[1].name", "light is stated twice"},
    {"an opening's unknown plane", [](Record &r) { r.openings = {{.name = "light", .plane = "L2"}}; }, false,
     "record.opening[0].plane", "no level plane of the record is called L2"},
    {"an opening's unknown sheet", [](Record &r) { r.openings = {{.name = "light", .sheet = "9"}}; }, false,
     "record.opening[0].sheet", "no sheet of the record is called 9"},
    {"a zone backwards",
     [](Record &r) {
         r.logs[0].zero = "NE", r.logs[0].zones = {{.from = noted("3.0.0"), .to = noted("2.0.0")}};
     },
     true, "found[0].zone[0].to", "the zone ends at 2.0.0, before its beginning at 3.0.0"},
    {"a peg past the end",
     [](Record &r) { r.logs[0].zero = "NE", r.logs[0].pegs = {{.at = noted("17.0.0")}}; }, false,
     "found[0].peg[0].at", "17.0.0 lies past the end of the log, which is 16.2.1 long"},
    {"moisture without a season",
     [](Record &r) { r.logs[0].moistures = {{.percent = 18, .depth = noted("0.1.0")}}; }, false,
     "found[0].moisture[0]", "a moisture says little without its season"},
    {"a share of one for percent",
     [](Record &r) {
         r.logs[0].moistures = {{.percent = 0.31, .depth = noted("0.1.0"), .season = Season::spring}};
     },
     false, "found[0].moisture[0].percent",
     "a moisture of 0.31 in a hundred is less than wood in a house has: was it a share of one, and 31 "
     "meant?"},
    {"an opening's jambs from nowhere",
     [](Record &r) { r.openings = {{.name = "light", .far_at_head = noted("5.0.0")}}; }, false,
     "record.opening[0].zero", "jambs of opening light were noted, and not from which corner"},
    {"inches typed as millimetres", [](Record &r) { r.logs[1].ends[0].height = noted("11 mm"); }, false,
     "found[1].end[0].height",
     "11 mm is 11 mm, where others like it are about 235 mm: was it noted in another unit?"},
    {"ten times as long", [](Record &r) { r.logs[1].length = noted("160.0.0"); }, false, "found[1].length",
     "160.0.0 is 48768 mm"},
};

} // namespace

TEST_CASE("A record without a fault has no problem") {
    Record record = small_record();
    CHECK(all_of(record).empty());
    CHECK(record.logs[0].length.value == Length::inches(194.25));
    CHECK(record.logs[0].length.written == "16.2.1");
}

TEST_CASE("Each fault of a record is told where it stands") {
    for (const Case &each : cases) {
        Record record = small_record();
        if (std::string(each.path) == "found[1].length")
            record.logs.push_back(log_of("A 4", "A", 4)); // of four a stranger can be told
        each.make(record);
        const auto problems = all_of(record);
        INFO(each.what);
        REQUIRE(problems.size() == 1);
        CHECK(problems[0].path == each.path);
        CHECK(problems[0].refused == each.refused);
        CHECK_THAT(test::english(problems[0].what), Catch::Matchers::StartsWith(each.sentence));
    }
}

TEST_CASE("Places of every kind along a log are told where nobody said from which corner they run") {
    const struct {
        const char *kind;
        std::function<void(FoundLog &)> make;
    } kinds[] = {
        {"stations", [](FoundLog &log) { log.stations = {{.at = noted("3.0.0")}}; }},
        {"zones", [](FoundLog &log) { log.zones = {{.from = noted("3.0.0")}}; }},
        {"zones", [](FoundLog &log) { log.zones = {{.to = noted("3.0.0")}}; }},
        {"tests", [](FoundLog &log) { log.tests = {{.tool = "awl", .at = noted("3.0.0")}}; }},
        {"moisture readings",
         [](FoundLog &log) {
             log.moistures = {
                 {.percent = 18, .at = noted("3.0.0"), .depth = noted("0.1.0"), .season = Season::spring}};
         }},
        {"pegs", [](FoundLog &log) { log.pegs = {{.at = noted("3.0.0")}}; }},
        {"later cuts", [](FoundLog &log) { log.later_cuts = {{.what = "kerf", .at = noted("3.0.0")}}; }},
        {"pegs, later cuts",
         [](FoundLog &log) {
             log.pegs = {{.at = noted("3.0.0")}}, log.later_cuts = {{.what = "kerf", .at = noted("3.0.0")}};
         }},
    };
    for (const auto &[kind, make] : kinds) {
        INFO(kind);
        Record record = small_record();
        make(record.logs[2]);
        const auto problems = all_of(record);
        REQUIRE(problems.size() == 1);
        CHECK(problems[0].path == "found[2].zero");
        CHECK_FALSE(problems[0].refused);
        CHECK_THAT(test::english(problems[0].what),
                   ContainsSubstring(std::string("places along log A 1.3 were noted (") + kind +
                                     "), and not from which corner"));
        record.logs[2].zero = "NW";
        CHECK(contradictions(record).empty());
    }
    Record whole = small_record(); // a zone of the whole log starts nowhere
    whole.logs[2].zones = {{.what = Soundness::rotten}};
    whole.logs[2].pegs = {{.state = PegState::missing}};
    CHECK(all_of(whole).empty());
}

TEST_CASE("A log is measured from its wall's corner though it begins at an opening") {
    Record record = small_record();
    FoundLog &log = record.logs[0];
    log.place.piece = 2;
    log.ends[0].corner = "door";
    log.zero = "NE"; // where the others of wall A end
    CHECK(all_of(record).empty());
    log.zero = "CA"; // by the walls that meet in it
    CHECK(all_of(record).empty());
    record.corners = {{.name = "by the well", .walls = {"A", "D"}}};
    log.zero = "by the well";
    CHECK(all_of(record).empty());
    log.zero = "SW"; // of no log and no wall here
    CHECK(all_of(record).size() == 1);
    log.place.piece.reset(); // a whole log has its zero at an end
    log.zero = "CA";
    CHECK(all_of(record).size() == 1);
    log.ends.pop_back(); // the other end may be that one
    CHECK(all_of(record).empty());
}

TEST_CASE("Logs that belong together may lie in one place") {
    Record record = small_record();
    record.logs[3].place = record.logs[0].place;
    record.logs[3].scarfed_to = {record.logs[0].tag};
    CHECK(all_of(record).empty());
    record.logs[3].scarfed_to = {};
    record.logs[3].cut_from = record.logs[0].cut_from = "A1";
    CHECK(all_of(record).empty());
    record.logs[3].cut_from = record.logs[0].cut_from = "";
    record.logs[0].replaces = record.logs[3].tag;
    CHECK(all_of(record).empty());
}

TEST_CASE("Each sheet says how its own numbers are read") {
    Record record = small_record();
    record.sheets = {{"7", {16, {}, {}}, "", ""}};
    record.logs[2].sheet = "7";
    record.logs[2].length = noted("1.3.13"); // HABS Guidelines 3.1.4: in sixteenths 15.8125 in
    record.logs[2].between_shoulders = {};
    read_numbers(record);
    CHECK(record.logs[2].length.value == Length::inches(15.8125));
    CHECK(record.logs[1].ends[0].height.value == Length::inches(11.5));
}
