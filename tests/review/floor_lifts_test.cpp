// Ends of floor timbers that are pulled up: statics of continuous beams, derived; see
// tests/trade/joist_test.cpp for the formulas' own checks.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/review_parts.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"

using namespace roundlay;
using test::laid;

namespace {

/// A stair before the beam leaves the joists that it cuts 70 long from its trimmer to the beam's middle.
Shell with_short_ends() {
    Shell shell = test::floored_and_loaded();
    shell.floors[0].beams = {{Length::mm(1500), {Length::mm(120), Length::mm(200)}}};
    shell.floors[0].openings = {
        {"stair", Length::mm(1500), Length::mm(400), Length::mm(1400), Length::mm(900)}};
    return shell;
}

std::vector<std::string> lifting(const Shell &shell, UnitSystem units = UnitSystem::metric) {
    const Layout layout = laid(shell);
    Findings findings;
    review_floors(shell, layout, bodies_of(layout), findings);
    std::vector<std::string> all;
    for (const Finding &f : findings)
        if (f.code == "end-lifts") all.push_back(test::message(f, units));
    return all;
}

} // namespace

TEST_CASE("The short end of a trimmed joist that a beam carries pulls up on its trimmer, and is told") {
    // By statics of two unequal spans a and b, w on b and s on a, simply held at their far ends: the moment
    // over the beam is (s a^3 + w b^3) / (8 (a + b)), and the end carries s a / 2 - moment / a.
    const Shell shell = with_short_ends();
    const Layout layout = laid(shell);
    const FloorScreen all = screen_floors(shell, layout);
    int short_ones = 0;
    for (const TimberScreen &s : all.timbers) {
        const Timber &t = layout.timbers[s.timber];
        if (t.rests.empty() || !t.hold_from.carrier) continue;
        ++short_ones;
        const double a = t.rests[0].at + 20, // half of the housing's 40
            b = length(t.to - t.from) + 40 - t.rests[0].at;
        const double moment = (s.sure * a * a * a + s.total * b * b * b) / (8 * (a + b));
        REQUIRE(s.lifts.size() == 3);
        CHECK(s.lifts[0] == Approx(moment / a - s.sure * a / 2));
        CHECK(s.lifts[0] > 1000);
        CHECK(s.lifts[1] == 0);
        CHECK(s.lifts[2] == 0);
    }
    CHECK(short_ones >= 1);
    const auto told = lifting(shell);
    REQUIRE_FALSE(told.empty());
    CHECK_THAT(told[0], ContainsSubstring("pulls up with ") && ContainsSubstring(" N where") &&
                            ContainsSubstring("three moments") && ContainsSubstring("licensed"));
    Shell imperial = shell;
    imperial.units = UnitSystem::imperial;
    CHECK_THAT(lifting(imperial, UnitSystem::imperial).at(0), ContainsSubstring(" lb where"));
}

TEST_CASE("Ends that nothing lifts, or that a log holds down, are not told of") {
    CHECK(lifting(test::floored_and_loaded()).empty());
    Shell shell = test::floored_and_loaded(); // trimmed joists without a beam
    shell.floors[0].openings = {
        {"stair", Length::mm(1500), Length::mm(1000), Length::mm(1400), Length::mm(1200)}};
    CHECK(lifting(shell).empty());
    shell = test::floored_and_loaded(); // an end of 300 before the beam lies in a wall, under its other logs
    shell.floors[0].beams = {{Length::mm(300), {Length::mm(200), Length::mm(200)}}};
    const FloorScreen all = screen_floors(shell, laid(shell));
    CHECK(std::ranges::any_of(all.timbers, [](const TimberScreen &s) { return s.lifts[0] > 1000; }));
    CHECK(lifting(shell).empty());
}

TEST_CASE("A joist beside a stair is as stressed whichever of its two spans the stair lies in") {
    // The room is 3600 clear: a stair of 900 from 400 on before a beam in the middle, and its mirror image.
    std::vector<double> before, behind;
    for (const bool first : {true, false}) {
        Shell shell = test::floored_and_loaded();
        shell.floors[0].beams = {{Length::mm(1800), {Length::mm(120), Length::mm(200)}}};
        shell.floors[0].openings = {
            {"stair", Length::mm(1500), Length::mm(first ? 400 : 2300), Length::mm(1400), Length::mm(900)}};
        const Layout layout = laid(shell);
        for (const TimberScreen &s : screen_floors(shell, layout).timbers)
            if (layout.timbers[s.timber].rests.size() == 1 && !s.points.empty())
                (first ? before : behind).push_back(s.bending);
    }
    REQUIRE(before.size() >= 2);
    REQUIRE(before.size() == behind.size());
    for (std::size_t i = 0; i < before.size(); ++i)
        CHECK(before[i] == Approx(behind[i]));
}

TEST_CASE("Joists that pull up on a wall harder than the logs over them weigh are told, in all") {
    Shell shell = test::floored_and_loaded(); // three rounds of some 230 mm lie under, one over the joists
    shell.floors[0].live_load = 12;
    shell.floors[0].beams = {{Length::mm(700), {Length::mm(120), Length::mm(200)}}}; // spans of 700 and 2900
    const Layout layout = laid(shell);
    Findings findings;
    review_floors(shell, layout, bodies_of(layout), findings);
    const std::string told = test::words(findings);
    CAPTURE(told);
    CHECK_THAT(told, ContainsSubstring("its timbers' ends in wall A pull up with ") &&
                         ContainsSubstring("the logs over them weigh "));
    // by hand: what each of the joists pulls up with at its near end, in all
    double lift = 0;
    for (const TimberScreen &s : screen_floors(shell, layout).timbers)
        if (layout.timbers[s.timber].use == TimberUse::joist) lift += s.lifts.front();
    CHECK_THAT(told,
               ContainsSubstring("pull up with " + std::to_string(std::llround(std::ceil(lift))) + " N"));
    shell.floors[0].beams.clear(); // nothing lifts
    Findings light;
    const Layout even = laid(shell);
    review_floors(shell, even, bodies_of(even), light);
    CHECK_THAT(test::words(light), !ContainsSubstring("the logs over them weigh"));
}
