// What the record says of the wood of each piece, word by word.
#include "kernel/fabric/as_found.h"
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
