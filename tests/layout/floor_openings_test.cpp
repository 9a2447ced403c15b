// Openings in floors, and openings, steps and walls that stand in the way of joists, in figures worked out by
// hand.

#include "tests/support/floored.h"
#include "tests/support/pieces.h"

#include <numbers>

using namespace roundlay;
using roundlay::test::piece;
using test::floored;
using test::laid;
using test::timbers;

namespace {

FloorOpening opening(double from_left, double from_wall, double width, double length) {
    return {"", Length::mm(from_left), Length::mm(from_wall), Length::mm(width), Length::mm(length)};
}

std::string told(const Shell &shell) {
    return test::words(lay_out(shell).findings);
}

} // namespace

TEST_CASE("An opening in the room's right corner is trimmed as one in the left") {
    const auto trimmer = [](double from_left) {
        Shell shell = floored();
        shell.floors[0].openings = {opening(from_left, 0, 1400, 1200)};
        const Layout layout = laid(shell);
        const std::vector<Timber> all = timbers(layout, TimberUse::trimmer);
        REQUIRE(all.size() == 1);
        CHECK(all[0].from.x == Approx(from_left)); // between the joist's side and the wall's face
        CHECK(all[0].to.x == Approx(from_left + 1400));
        CHECK(all[0].from.y == Approx(1200 + 50));
        return layout.pieces[all[0].piece];
    };
    const Piece left = trimmer(0), right = trimmer(4600 - 1400);
    // 80 mm lie in the wall, and of the joist 100 mm wide 0.4 are let in
    CHECK(left.blank.length == Approx(80 + 1400 + 40));
    CHECK(right.blank.length == Approx(left.blank.length));
    CHECK(left.below[0] == "D-03-1"); // 345 to 555: walls B and D lie half a round higher
    CHECK(right.below[1] == "B-03-1");
}

TEST_CASE("Between two openings there is room for a joist of each and 25 mm beside both") {
    const auto beside = [](double apart, bool turned) {
        Shell shell = floored();
        const FloorOpening a = opening(600, 1000, 800, 1200), b = opening(1400 + apart, 1000, 700, 1200);
        shell.floors[0].openings = turned ? std::vector{b, a} : std::vector{a, b};
        return told(shell);
    };
    for (const bool turned : {false, true}) { // two joists 100 mm wide and twice 25 mm
        CHECK_THAT(beside(249, turned), ContainsSubstring("comes too near another opening of this floor"));
        CHECK_THAT(beside(251, turned), !ContainsSubstring("comes too near"));
        CHECK_THAT(beside(251, turned), !ContainsSubstring("floor-does-not-fit"));
    }
}

TEST_CASE("A beam keeps clear of an opening and of the trimmers at its ends") {
    const auto with_beam = [](double from_wall) {
        Shell shell = floored();
        shell.floors[0].openings = {opening(1500, 1000, 1400, 1200)}; // its trimmers from 900 to 2300
        shell.floors[0].beams = {{Length::mm(from_wall), {Length::mm(200), Length::mm(200)}}};
        return told(shell);
    };
    const auto crosses = ContainsSubstring("crosses a floor opening or its trimmers");
    for (const double y : {801.0, 950.0, 1600.0, 2250.0, 2399.0})
        CHECK_THAT(with_beam(y), crosses);
    for (const double y : {799.0, 2401.0})
        CHECK_THAT(with_beam(y), !ContainsSubstring("floor-does-not-fit"));
}

TEST_CASE("A trimmer reaches a tapered joist's side where that is thickest within the trimmer's width") {
    // Joists 120 mm wide at the butt and 80 at the tip, 3760 long with 80 mm in each wall; they turn about
    // from one to the next. Those beside the opening stand at 1440 and 2960, the third and the sixth of the
    // floor.
    Shell shell = floored();
    shell.floors[0].joist.width = Length::mm(120);
    shell.floors[0].tip_width = Length::mm(80);
    shell.floors[0].openings = {opening(1500, 1000, 1400, 1200)};
    const std::vector<Timber> trimmers = timbers(laid(shell), TimberUse::trimmer);
    REQUIRE(trimmers.size() == 2);
    // From wall A: the near trimmer lies from 880 to 1000, the far one from 2200 to 2320. The left joist's
    // butt lies in wall A, the right one's in wall C.
    const auto left = [](double y) { return 1440 + (120 - 40 * (80 + y) / 3760) / 2; };
    const auto right = [](double y) { return 2960 - (80 + 40 * (80 + y) / 3760) / 2; };
    CHECK(trimmers[0].from.x == Approx(left(880)));
    CHECK(trimmers[0].to.x == Approx(right(1000)));
    CHECK(trimmers[1].from.x == Approx(left(2200)));
    CHECK(trimmers[1].to.x == Approx(right(2320)));
}

TEST_CASE("Openings in a wall beside and over the ends of joists are not in their way") {
    // Joists' ends in wall A from 750 to 850 mm, 1350 to 1450 and so on, from 380 to 560 high.
    const auto with_window = [](const Opening &window) {
        Shell shell = floored();
        shell.openings = {window};
        return told(shell);
    };
    const auto in_the_way = ContainsSubstring("its end in wall A lies in window 1");
    CHECK_THAT(with_window(test::window("A", 850, 300, 500, 300)), !in_the_way);
    CHECK_THAT(with_window(test::window("A", 849, 300, 500, 300)), in_the_way);
    CHECK_THAT(with_window(test::window("A", 850, 300, 501, 300)), in_the_way);
    CHECK_THAT(with_window(test::window("B", 1000, 300, 800, 300)),
               !ContainsSubstring("timber-misses-wall")); // carries no joist
    CHECK_THAT(with_window(test::window("A", 700, 560, 200, 200)), !in_the_way);
    CHECK_THAT(with_window(test::window("A", 700, 559, 200, 200)), in_the_way);
    CHECK_THAT(with_window(test::window("A", 700, 100, 200, 280)), !in_the_way); // under them: see below
    CHECK_THAT(with_window(test::window("A", 700, 100, 200, 281)), in_the_way);
}

TEST_CASE("Over an opening a joist's end needs wood of the log over it, not only of the log's height") {
    // The bed of the first joist in wall A, from 750 to 850 mm, lies at 380 in the log from 230 to 440. What
    // the window leaves of that log under the bed is 380 less its top; 50 mm are asked for, and with less
    // than 10, which cannot be left standing, nothing carries the joist.
    const auto with_window = [](double from_left, double top) {
        Shell shell = floored();
        shell.openings = {test::window("A", from_left, 100, 200, top - 100)};
        return lay_out(shell).findings;
    };
    const auto is_warned = [](const Findings &findings) {
        return test::has(findings, "thin-wood-under-pocket");
    };
    CHECK_FALSE(is_warned(with_window(700, 330)));
    const Findings little = with_window(700, 331);
    CHECK(is_warned(little));
    CHECK_FALSE(has_errors(little));
    CHECK_THAT(test::words(little),
               ContainsSubstring("its pocket leaves only 49 mm of A-02-1 under it; raise "
                                 "the floor by 1 mm"));
    CHECK_FALSE(has_errors(with_window(700, 370)));
    const Findings none = with_window(700, 371);
    CHECK(has_errors(none));
    CHECK_THAT(test::words(none),
               ContainsSubstring("its pocket leaves only 9 mm of A-02-1 under it; raise the "
                                 "floor by 41 mm"));
    CHECK(has_errors(with_window(700, 380)));
    CHECK_FALSE(is_warned(with_window(850, 380))); // beside it
    CHECK_FALSE(has_errors(with_window(850, 380)));
}

TEST_CASE("A joist's end lies wholly in a log, not past the end that a step of the foundation gives it") {
    // The step ends the second log of wall A, in which the joists lie, at 2000 mm and starts it again at
    // 3000: in the room, which begins at 200, at 1800 and 2800.
    const auto at = [](double first) {
        Shell shell = floored();
        shell.steps = {{"A", Length::mm(2000), Length::mm(1000), Length::mm(460)}};
        shell.floors[0].first = Length::mm(first);
        shell.floors[0].spacing = Length::mm(4000);
        return told(shell);
    };
    const auto past_end = ContainsSubstring("its end in wall A comes too near the end of a log of round 2");
    CHECK_THAT(at(1800 - 50), !ContainsSubstring("timber-misses-wall"));
    CHECK_THAT(at(1800 - 49), past_end);
    CHECK_THAT(at(2800 + 49), past_end);
    CHECK_THAT(at(2800 + 50), !ContainsSubstring("timber-misses-wall"));
}

TEST_CASE("A joist keeps clear of the notch of a wall that meets its own at a slant, across the thickness") {
    // Partition Q, from 2400 to 2600 mm north of the outside of wall A, carries the joists; from the south P
    // runs into it, turned 60 degrees from east, its middle line through (2000, 100) in A's, and its tails
    // pass through Q to its far face. P's sides lie 100 / sin 60 to the left and right of that line.
    constexpr double tan60 = std::numbers::sqrt3;
    const double half = 100 / (tan60 / 2);
    const double low = 2000 + 2300 / tan60 - half - 200,
                 high = 2000 + 2500 / tan60 + half - 200; // in the room
    const auto at = [](double first) {
        Shell shell = floored();
        shell.walls[1].length = shell.walls[3].length = Length::mm(6000);
        shell.notch.kind = NotchKind::square_lap;
        Partition q, p;
        q.name = "Q", q.from = "B", q.to = "D", q.from_left = Length::mm(2500);
        p.name = "P", p.from = "A", p.to = "Q", p.from_left = Length::mm(2000), p.heading = 60;
        shell.partitions = {q, p};
        shell.floors[0].from = "Q";
        shell.floors[0].first = Length::mm(first);
        shell.floors[0].spacing = Length::mm(4000);
        return told(shell);
    };
    const auto in_notch = ContainsSubstring("its end in wall Q lies in the notches of wall P");
    const auto misses = ContainsSubstring("timber-misses-wall");
    CHECK_THAT(at(low - 50 - 1), !misses);
    CHECK_THAT(at(low - 50 + 1), in_notch);
    CHECK_THAT(at(high + 50 - 1), in_notch);
    CHECK_THAT(at(high + 50 + 1), !misses);
}
