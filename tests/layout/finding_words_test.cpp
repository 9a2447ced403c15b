// What findings say: the true cause, a place once, and advice that mends.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <set>
#include <string>

using namespace roundlay;
using test::has;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

Shell floored(double level) {
    Shell shell = test::plain_shell();
    Floor floor;
    floor.name = "G";
    floor.from = "A";
    floor.to = "C";
    floor.level = mm(level);
    floor.joist = {mm(100), mm(180)};
    floor.spacing = mm(600);
    floor.bearing = mm(80);
    shell.floors = {floor};
    return shell;
}

void record(Shell &shell, const std::string &wall, int round, double butt, double tip) {
    OwnLog own;
    own.wall = wall;
    own.round = round;
    own.sizes.butt_height = mm(butt);
    own.sizes.tip_height = mm(tip);
    shell.own_logs.push_back(own);
}

std::vector<Finding> of_level(const Layout &layout) {
    std::vector<Finding> all;
    for (const Finding &f : layout.findings)
        if (f.subject == "floor[0].level") all.push_back(f);
    return all;
}

/// What follows the last semicolon.
std::string advice_of(const Finding &finding) {
    const auto at = test::message(finding).rfind("; ");
    return at == std::string::npos ? "" : test::message(finding).substr(at + 2);
}

/// "raise the floor by 30 mm" as a length up.
Length move_in(const std::string &advice) {
    const std::string up = "raise the floor by ", down = "lower the floor by ";
    REQUIRE((advice.starts_with(up) || advice.starts_with(down)));
    const auto read = parse_length(advice.substr(up.size(), advice.find(',') - up.size()));
    REQUIRE(std::holds_alternative<Length>(read));
    return advice.starts_with(up) ? std::get<Length>(read) : -std::get<Length>(read);
}

} // namespace

TEST_CASE("A floor on uneven logs is told one change of its level, which mends it") {
    Shell shell = floored(640);
    const double heights[2][3][2] = {{{214, 213}, {213, 207}, {215, 200}},
                                     {{200, 211}, {202, 195}, {219, 201}}};
    for (int w = 0; w < 2; ++w)
        for (int r = 0; r < 3; ++r)
            record(shell, w ? "C" : "A", r + 1, heights[w][r][0], heights[w][r][1]);
    const auto told = of_level(lay_out(shell));
    REQUIRE(told.size() > 1);
    std::set<std::string> advice;
    for (const Finding &f : told)
        advice.insert(advice_of(f));
    REQUIRE(advice.size() == 1);
    shell.floors[0].level = shell.floors[0].level + move_in(*advice.begin());
    CHECK(of_level(lay_out(shell)).empty());
}

TEST_CASE("Whatever a floor is told of its level, at any level, mends it or is said to be no small change") {
    int mended = 0;
    for (double level = 90; level < 1200; level += 37) {
        Shell shell = floored(level);
        record(shell, "A", 1, 235, 190);
        record(shell, "C", 2, 190, 225);
        for (const Finding &f : of_level(lay_out(shell))) {
            if (test::message(f).find("no small change") != std::string::npos) continue;
            const std::string advice = advice_of(f);
            if (f.weight == Weight::warning && advice.find("the floor by") == std::string::npos) continue;
            Shell next = shell;
            next.floors[0].level = next.floors[0].level + move_in(advice);
            for (const Finding &after : of_level(lay_out(next)))
                CHECK(after.weight != Weight::error);
            ++mended;
        }
    }
    CHECK(mended > 5);
}

TEST_CASE(
    "A half log as high as a whole one is named where tails do not alternate, and its height mends it") {
    Shell shell = test::plain_shell();
    record(shell, "B", 1, 300, 300);
    const Layout layout = lay_out(shell);
    const auto is = [](const Finding &f) { return f.code == "tails-do-not-alternate"; };
    const auto found = std::ranges::find_if(layout.findings, is);
    REQUIRE(found != layout.findings.end());
    CHECK_THAT(test::message(*found), !ContainsSubstring("pitches") &&
                                          ContainsSubstring("half log of wall B, round 1") &&
                                          ContainsSubstring("300 mm high"));
    const std::string at = "high: at ";
    const auto from = test::message(*found).find(at) + at.size();
    const auto read =
        parse_length(test::message(*found).substr(from, test::message(*found).find(" they", from) - from));
    REQUIRE(std::holds_alternative<Length>(read));
    shell.own_logs[0].sizes.butt_height = shell.own_logs[0].sizes.tip_height = std::get<Length>(read);
    CHECK(std::ranges::none_of(lay_out(shell).findings, is));
}

TEST_CASE("Sills are spoken of where there is an opening") {
    Shell shell = test::plain_shell();
    shell.rounds.pitch = mm(60);
    CHECK_FALSE(has(lay_out(shell).findings, "trim-does-not-fit"));
    shell.openings = {test::window("A", 2000, 70, 800, 80)}; // a level sill cuts nothing in two
    CHECK_FALSE(has(lay_out(shell).findings, "trim-does-not-fit"));
    shell.trim.sill_slope = Slope::rise_per_run(0.1);
    CHECK(has(lay_out(shell).findings, "trim-does-not-fit"));
}

TEST_CASE("A finding about an opening without a name says its place once") {
    const Opening lone[] = {test::window("A", 100, 300, 800, 400), test::window("A", 4500, 300, 300, 400),
                            test::window("A", 1000, 300, 800, 900), test::window("A", 250, 300, 4600, 400),
                            test::window("A", 1000, 300, 800, 150)};
    std::vector<Layout> layouts;
    for (const Opening &o : lone) {
        Shell shell = test::plain_shell();
        shell.openings = {o};
        layouts.push_back(lay_out(shell));
    }
    Shell two = test::plain_shell();
    two.openings = {test::window("A", 1000, 300, 800, 400), test::window("A", 1500, 300, 800, 400)};
    layouts.push_back(lay_out(two));
    int told = 0;
    for (const Layout &layout : layouts)
        for (const Finding &f : layout.findings) {
            if (!f.subject.starts_with("opening[")) continue;
            const std::string said = test::place(f) + ": " + test::message(f);
            INFO(said);
            CHECK(said.find(" in wall A") == std::string::npos);
            const auto name = said.find("window 1");
            CHECK((name == std::string::npos || said.find("window 1", name + 1) == std::string::npos));
            ++told;
        }
    CHECK(told >= 5);
}
