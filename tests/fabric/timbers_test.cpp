// Joists, beams and trimmers that were found: identity, place, condition and decision like a log's.
#include "kernel/fabric/as_found.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/standing.h"
#include "kernel/layout/lay_out.h"
#include "kernel/measured/found_piece.h"
#include "tests/fabric/laid.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"
#include "tests/support/tagged.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::found_log;
using roundlay::test::Laid;
using roundlay::test::tagged;

namespace {

FoundPlace timber(const std::string &tag) {
    return {{}, {}, {}, tag};
}

NotedLength noted(double mm) {
    NotedLength number;
    number.written = std::to_string(mm), number.value = Length::mm(mm);
    return number;
}

FoundLog joist(Decision what) {
    FoundLog log = found_log("joist by the stove", timber("G-J02"), {what});
    log.ends.resize(2);
    log.ends[0].corner = "A 3", log.ends[1].corner = "C 3";
    log.zero = "C 3";
    return log;
}

Shell kept_floor() {
    Shell shell = test::floored();
    shell.floors[0].fabric = Fabric::kept;
    return shell;
}

} // namespace

TEST_CASE("A timber lies where its tag says, and no log does") {
    const Layout layout = lay_out(test::floored());
    const auto pieces = pieces_at(layout, timber("G-J02"));
    REQUIRE(pieces.size() == 1);
    CHECK(layout.pieces[pieces.front()].tag == "G-J02");
    CHECK(pieces_at(layout, timber("A-02-1")).empty()); // a log's tag is no timber's
    CHECK(pieces_at(layout, timber("G-J99")).empty());
}

TEST_CASE("A timber's wood is told of it and counts as old wood: one log more, its volume, no outside face") {
    const Laid house{kept_floor()};
    Record record;
    record.logs = {found_log("A 2", {"A", 2, {}}, {Decision::keep})};
    const FabricFigures without = fabric_figures(record, house.layout, house.bodies);
    FoundLog found = joist(Decision::keep);
    found.zones.push_back({});
    found.zones.back().what = Soundness::rotten;
    record.logs.push_back(found);
    const FabricFigures with = fabric_figures(record, house.layout, house.bodies);
    const auto piece = tagged(house.layout, "G-J02");
    CHECK(with.found.logs == without.found.logs + 1);
    CHECK(with.found.volume - without.found.volume ==
          Approx(house.bodies[house.layout.pieces[piece].model].volume));
    CHECK(with.found.outside == without.found.outside);
    const auto told = as_found(record, house.layout);
    REQUIRE_FALSE(told[piece].phrases.empty());
    CHECK(test::english(told[piece].phrases[0]) == "found as joist by the stove");
    CHECK(test::english(told[piece].phrases[1]) == "rotten");
    CHECK(told[tagged(house.layout, "G-J01")].phrases.empty());
}

TEST_CASE("Places along a timber run from the end that its record names") {
    const Layout layout = lay_out(test::floored());
    Record record;
    record.logs = {joist(Decision::keep)};
    const double length = layout.pieces[tagged(layout, "G-J02")].blank.length;
    record.logs[0].pegs.push_back({});
    record.logs[0].pegs.back().at = noted(length - 100);
    CHECK(places_past_log(record, layout).empty());
    record.logs[0].pegs.back().at = noted(length + 100);
    REQUIRE(places_past_log(record, layout).size() == 1);
    CHECK(places_past_log(record, layout)[0].path == "found[0].peg[0].at");
    record.logs[0].pegs.clear();
    record.logs[0].place = timber("G-J77");
    const auto strange = places_past_log(record, layout);
    REQUIRE(strange.size() == 1);
    CHECK(strange[0].path == "found[0].timber");
}

TEST_CASE("Decisions on timbers are held against their floor") {
    const Laid found{kept_floor()}, bare{test::plain_shell()};
    Record record;
    record.logs = {joist(Decision::keep)};
    const auto told = [&](const Layout &now) {
        std::string all;
        for (const DecisionProblem &problem : decision_problems(record, now, &found.layout))
            all += test::english(problem.what) + "\n";
        return all;
    };
    Layout again = lay_out(kept_floor());
    CHECK(told(again) == "");
    CHECK_THAT(told(bare.layout), ContainsSubstring("is to stay, and this state has no timber G-J02"));
    record.logs[0].length = noted(1000);
    CHECK_THAT(told(again), ContainsSubstring("it is too short for that place"));
    record.logs[0].length = {};
    record.logs[0].decisions[0].what = Decision::replace;
    CHECK_THAT(told(again), ContainsSubstring("order it by hand"));
    Shell renewed = kept_floor();
    renewed.floors[0].fabric = Fabric::replacement;
    CHECK(told(lay_out(renewed)) == "");
    record.logs[0].decisions[0].what = Decision::keep;
    CHECK_THAT(told(lay_out(renewed)), ContainsSubstring("this state has no timber") ||
                                           ContainsSubstring("stated to be a replacement"));
    CHECK(standing_as(found.layout, tagged(found.layout, "G-J02"), lay_out(renewed)).empty());
    CHECK(standing_as(found.layout, tagged(found.layout, "G-J02"), again).size() == 1);
}
