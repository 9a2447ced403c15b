// An error in one stage keeps nobody from hearing what the later ones find: all in one run, and nothing that
// only comes of the first error.
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cmath>
#include <map>
#include <set>
#include <string>

using namespace roundlay;

namespace {

std::multiset<std::string> errors_of(const Shell &shell) {
    std::multiset<std::string> codes;
    for (const Finding &f : lay_out(shell).findings)
        if (f.weight == Weight::error) codes.insert(f.code);
    return codes;
}

using Codes = std::multiset<std::string>;

StatedBore rod(const std::string &wall, double from_left) {
    StatedBore bore;
    bore.use = BoreUse::rod;
    bore.wall = wall;
    bore.from_left = Length::mm(from_left);
    bore.diameter = Length::mm(20);
    return bore;
}

/// Past the right end of its wall's logs.
StatedBore rod_in_the_void() {
    return rod("A", 9000);
}

/// In the tails of its left corner.
Opening window_in_a_corner() {
    return test::window("A", 50, 300, 800, 400);
}

} // namespace

TEST_CASE(
    "An opening that does not fit, a floor that does not and a bore in the void are told of in one run") {
    Shell shell = test::plain_shell();
    CHECK(errors_of(shell) == Codes{});
    shell.openings = {window_in_a_corner()};
    shell.floors = test::floored().floors;
    shell.floors[0].to = "B"; // they do not face each other
    shell.bores = {rod_in_the_void()};
    CHECK(errors_of(shell) == Codes{"bore-misses-log", "floor-does-not-fit", "opening-cuts-corner"});
    CHECK(lay_out(shell).pieces.empty());
}

TEST_CASE("A refused opening is not blamed for what it would have cut") {
    Shell shell = test::plain_shell();
    shell.openings = {window_in_a_corner()};
    shell.bores = {rod("A", 700)}; // through where the window would be
    CHECK(errors_of(shell) == Codes{"opening-cuts-corner"});
    OwnLog second; // a piece that there is only where the window parts its round
    second.wall = "A", second.round = 2, second.piece = 2;
    shell.own_logs = {second};
    CHECK(errors_of(shell) == Codes{"opening-cuts-corner"});
}

TEST_CASE("Every two openings that fit by themselves are held against one another, whatever a third does") {
    Shell shell = test::plain_shell();
    shell.openings = {window_in_a_corner(), test::window("C", 1000, 300, 800, 400),
                      test::window("C", 1500, 300, 800, 400)};
    CHECK(errors_of(shell) == Codes{"opening-cuts-corner", "openings-too-close"});
}

TEST_CASE("Rounds and pegs are checked though the plan does not close") {
    Shell shell = test::plain_shell();
    shell.walls[0].length = shell.walls[0].length + Length::mm(500);
    shell.rounds.pitch.reset();
    shell.rounds.height.reset();
    shell.pegs.draw = shell.pegs.diameter;
    CHECK(errors_of(shell) == Codes{"peg-rule", "plan-not-closed", "rounds-missing"});
}

TEST_CASE("Where no rounds are known, openings, floors and bores are held against the plan alone") {
    Shell shell = test::plain_shell();
    shell.rounds.pitch.reset();
    shell.rounds.height.reset();
    shell.openings = {window_in_a_corner(), test::window("B", 1500, 300, 800, 9000)}; // how high is not known
    shell.floors = test::floored().floors;
    shell.floors[0].to = "B";
    shell.bores = {rod("Z", 1000), rod_in_the_void()}; // there is no log either way
    CHECK(errors_of(shell) ==
          Codes{"bore-misses-log", "floor-does-not-fit", "opening-cuts-corner", "rounds-missing"});
}

TEST_CASE("Steps that are refused leave corners alone, and openings are checked all the same") {
    Shell shell = test::plain_shell();
    FoundationStep step;
    step.wall = "A";
    step.from_left = Length::mm(1000), step.width = Length::mm(1000), step.rise = Length::mm(5000);
    shell.steps = {step};
    shell.openings = {window_in_a_corner()};
    CHECK(errors_of(shell) == Codes{"opening-cuts-corner", "step-over-wall"});
}

TEST_CASE("A floor from a wall that is not there says so") {
    Shell shell = test::floored();
    shell.floors[0].from = "Z";
    const std::string told = test::words(lay_out(shell).findings);
    CAPTURE(told);
    CHECK_THAT(told, ContainsSubstring("there is no wall Z in this shell"));
    shell.floors[0].from = "A", shell.floors[0].to = "Y";
    CHECK_THAT(test::words(lay_out(shell).findings), ContainsSubstring("there is no wall Y in this shell"));
}

TEST_CASE("A floor and a bore that do not fit are both told of") {
    Shell shell = test::floored();
    REQUIRE(errors_of(shell) == Codes{});
    shell.floors[0].level = Length::mm(3000);
    shell.bores = {rod_in_the_void()};
    const Codes codes = errors_of(shell);
    CHECK(codes.contains("floor-over-wall"));
    CHECK(codes.count("bore-misses-log") == 1);
}

TEST_CASE("Nothing is told beside a refused opening that is not told without it") {
    CHECK(rc::check([] {
        const Shell shell = test::any_fitted_shell();
        const Codes before = errors_of(shell);
        Shell worse = shell;
        worse.openings.push_back(test::window(shell.walls[0].name, -100, 300, 200, 200));
        Codes after = errors_of(worse);
        if (shell.openings.empty()) after.erase("trim-does-not-fit"); // now it is cut somewhere
        if (before.empty()) RC_ASSERT(after == Codes{"opening-cuts-corner"});
        after.erase("opening-cuts-corner");
        for (const std::string &code : after)
            RC_ASSERT(before.contains(code));
    }));
}

TEST_CASE("A partition that does not fit hides no error of the outside walls' openings, floors and bores") {
    Shell shell = test::plain_shell();
    shell.openings = {window_in_a_corner(), test::window("P", 1000, 300, 800, 9000)};
    shell.floors = test::floored().floors;
    shell.floors[0].level = Length::mm(3000);
    shell.bores = {rod_in_the_void(), rod("P", 90000)}; // of what is in the partition nothing is known yet
    const Codes others{"bore-misses-log", "floor-over-wall", "opening-cuts-corner"};
    Partition p;
    p.name = "P", p.from = "A", p.to = "C";
    for (const auto &[place, code] :
         std::map<double, std::string>{{300, "tee-too-near"}, {9000, "tee-off-wall"}}) {
        p.from_left = Length::mm(place);
        shell.partitions = {p};
        Codes all = others;
        all.insert(code);
        CHECK(errors_of(shell) == all);
    }
}

TEST_CASE("A floor over the walls is told so with all else that is wrong with it") {
    Shell shell = test::floored();
    Floor &floor = shell.floors[0];
    floor.level = Length::mm(3000);
    floor.openings = {{"hatch", Length::mm(4000), Length::mm(1000), Length::mm(900), Length::mm(900)}};
    floor.beams = {{Length::mm(30), {Length::mm(100), Length::mm(100)}}};
    CHECK(errors_of(shell) == Codes{"floor-does-not-fit", "floor-does-not-fit", "floor-over-wall"});
}

TEST_CASE("Where the walls alone do not make a plan, a partition too near one does not hide that") {
    Shell shell = test::plain_shell();
    shell.walls[1].length = Length::mm(3000);
    shell.walls[2].heading = 135; // one corner cut off: five walls
    shell.walls[2].length = Length::mm(1000 * std::sqrt(2));
    shell.walls.insert(shell.walls.begin() + 3, Wall{"E", 180, Length::mm(4000), {}, {}, {}});
    shell.partitions = {test::partition("P", "A", Length::mm(300), "E")};
    CHECK(errors_of(shell) == Codes{"tee-too-near", "walls-do-not-alternate"});
    CHECK_THAT(test::words(lay_out(shell).findings),
               ContainsSubstring("no place along wall A does, as the walls are stated"));
}
