// What the record says of the wood of each piece, word by word.
#include "kernel/fabric/as_found.h"
#include "kernel/fabric/unrecorded.h"
#include "kernel/layout/lay_out.h"
#include "kernel/record/check_record.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

NotedLength noted(const char *written) {
    return {written, {}, Certainty::measured, "", ""};
}

/// The third log of wall A, found under a tag of its own.
FoundLog found_log() {
    FoundLog log;
    log.tag = "front 3";
    log.place = {"A", 3, {}};
    log.zero = "AB";
    log.zones = {{Soundness::sound, {}, {}, {}, {}, ""},
                 {Soundness::checked, noted("1 m"), {}, {}, {}, ""},
                 {Soundness::rotten,
                  noted("3.2 m"),
                  noted("4.1 m"),
                  {FoundFace::top, FoundFace::inside},
                  noted("60 mm"),
                  "under the window"}};
    log.pegs = {{PegState::found, noted("500 mm"), {}, {}, ""},
                {PegState::missing, noted("1843 mm"), {}, {}, ""},
                {PegState::broken, {}, {}, {}, ""},
                {PegState::found, noted("3 m"), {}, {}, "loose"}};
    log.later_cuts = {{"cut flush", noted("0 mm"), ""}};
    log.bow = noted("25 mm"), log.bow_to = FoundFace::outside;
    log.wind = noted("12"); // its unit is not known: as it was noted
    log.note = "smells of smoke";
    log.decisions = {{Decision::keep, "", "", "", {}}, {Decision::replace, "", "", "", {}}};
    return log;
}

AsFound told_of(Record record, const std::string &tag) {
    (void)read_numbers(record);
    const Layout layout = lay_out(test::plain_shell());
    const auto all = as_found(record, layout);
    for (const auto piece : layout.pieces.indices())
        if (layout.pieces[piece].tag == tag) return all[piece];
    FAIL(tag);
    return {};
}

} // namespace

TEST_CASE("What hurts first is told first, each place and depth with its unit, and the pegs are counted") {
    Record record;
    record.logs = {found_log()};
    const AsFound found = told_of(record, "A-03-1");
    std::vector<std::string> words;
    for (const Said &phrase : found.phrases)
        words.push_back(test::english(phrase));
    CHECK(words == std::vector<std::string>{
                       "found as front 3",
                       "rotten from 3200 mm to 4100 mm, top, inside, 60 mm deep (under the window)",
                       "checked from 1000 mm on", "peg missing at 1843 mm", "peg broken",
                       "peg at 3000 mm (loose)", "later cut: cut flush at 0 mm", "bow 25 mm to the outside",
                       "wind 12", "note: smells of smoke", "decided: replace", "places from AB"});
    CHECK(found.pegs.found == 2);
    CHECK(found.pegs.missing == 1);
    CHECK(found.pegs.broken == 1);
    CHECK(found.pegs.all() == 4);
    CHECK(told_of(record, "A-04-1").phrases.empty());
    CHECK(told_of({}, "A-03-1").phrases.empty());
}

TEST_CASE("A log that lies in the place of several pieces is told at each of them") {
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 2000, 250, 900, 450)};
    const Layout layout = lay_out(shell);
    Record record;
    record.logs = {found_log()};
    (void)read_numbers(record);
    const auto all = as_found(record, layout);
    int told = 0;
    for (const auto piece : layout.pieces.indices())
        if (!all[piece].phrases.empty()) {
            CHECK(layout.pieces[piece].round == 3);
            ++told;
        }
    CHECK(told == 2);
}

TEST_CASE("Of a log that is stated to be a replacement nothing is told: its wood is new") {
    Shell shell = test::plain_shell();
    shell.own_logs.emplace_back();
    shell.own_logs.back().wall = "A", shell.own_logs.back().round = 3;
    shell.own_logs.back().fabric = Fabric::replacement;
    Record record;
    record.logs = {found_log()};
    const Layout layout = lay_out(shell);
    for (const AsFound &each : as_found(record, layout))
        CHECK(each.phrases.empty());
}

TEST_CASE("A log that is used elsewhere is told there, and not the one whose place it takes") {
    FoundLog rotten = found_log(), sound;
    rotten.decisions = {{Decision::leave_out, "", "", "", {}}};
    sound.tag = "back 2", sound.place = {"C", 2, {}}, sound.note = "straight";
    sound.decisions = {{Decision::use_elsewhere, "", "", "", {"A", 3, {}}}};
    Record record;
    record.logs = {rotten, sound};
    Shell shell = test::plain_shell();
    OwnLog comes;
    comes.wall = "A", comes.round = 3, comes.mark = "back 2";
    comes.fabric = Fabric::kept;
    shell.own_logs = {comes};
    const Layout layout = lay_out(shell);
    const auto all = as_found(record, layout);
    for (const auto piece : layout.pieces.indices()) {
        if (layout.pieces[piece].tag != "A-03-1") continue;
        std::string told;
        for (const Said &phrase : all[piece].phrases)
            told += test::english(phrase) + "; ";
        CHECK_THAT(told, Catch::Matchers::StartsWith("log back 2, from wall C, round 2; ") &&
                             ContainsSubstring("note: straight") && !ContainsSubstring("rotten"));
    }
}

TEST_CASE("Logs that nobody recorded are told where a state orders them as new wood") {
    Record record;
    record.logs = {found_log()};
    Shell shell = test::plain_shell();
    CHECK_FALSE(unrecorded_and_ordered(record, lay_out(shell))); // it tells of no old wood
    OwnLog kept;
    kept.wall = "A", kept.round = 3, kept.fabric = Fabric::kept;
    shell.own_logs = {kept};
    const Layout layout = lay_out(shell);
    const std::size_t logs = layout.pieces.size();
    CHECK(unrecorded_logs(record, layout).size() == logs - 1);
    const auto told = unrecorded_and_ordered(record, layout);
    REQUIRE(told);
    CHECK_THAT(test::english(told->what),
               Catch::Matchers::StartsWith(std::to_string(logs - 1) + " logs that nobody recorded are new"));
}
