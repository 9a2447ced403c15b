// Stepped foundations: rounds below a step start at it.

#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <numbers>

using namespace roundlay;
using test::has;
using test::step;
using test::words;

namespace {

double bores_in(const Layout &layout) {
    double sum = 0;
    for (const Piece &p : layout.pieces)
        for (const Cut &cut : p.cuts)
            if (const Bore *b = std::get_if<Bore>(&cut))
                sum += std::numbers::pi / 4 * b->diameter * b->diameter * (b->z_to - b->z_from);
    return sum;
}

/// Hewn wood, bores filled in again.
double wood_of(const Layout &layout, const Bodies &bodies) {
    double sum = bores_in(layout);
    for (const Piece &p : layout.pieces)
        sum += bodies[p.model].volume;
    return sum;
}

/// Wood of wall A in a box over the step's stretch.
double wood_in(const Layout &layout, const FoundationStep &s) {
    const Cell box =
        box_cell({{s.from_left.mm(), -1000, -1000}, {(s.from_left + s.width).mm(), 2000, s.rise.mm()}});
    const Bodies bodies = bodies_of(layout);
    double sum = 0;
    for (const Piece &p : layout.pieces)
        if (p.wall == Index<WallPlace>(0))
            for (const Cell &cell : bodies[p.model].cells)
                sum += common_volume(moved(cell, p.frame), box); // wall A's frame is the world's
    return sum;
}

bool sound(const Layout &layout) {
    const Bodies bodies = bodies_of(layout);
    const bool closed = std::all_of(bodies.begin(), bodies.end(), [](const Body &b) {
        return is_closed(b.hewn) && b.bores_clear && b.volume > 0;
    });
    return closed && overlaps(layout, bodies).empty() && blocked_on_the_way_down(layout, bodies).empty();
}

} // namespace

TEST_CASE("Over a step in the middle of a wall rounds start at it") {
    Shell shell = test::plain_shell(); // 5 m by 4 m, pitch 230, gap 20, wall A starts full
    const double whole = wood_of(lay_out(shell), bodies_of(lay_out(shell)));
    shell.steps = {step("A", 1500, 2000, 460)}; // two rounds
    const Layout layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(sound(layout));
    CHECK(whole - wood_of(layout, bodies_of(layout)) == Approx(2 * 210.0 * 2000 * 200).epsilon(1e-9));
    const auto left = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                   [](const Piece &p) { return p.tag == "A-01-1"; });
    REQUIRE(left != layout.pieces.end());
    CHECK(left->far.kind == EndKind::step);
    CHECK(left->far.at == "step 1");
    CHECK(left->blank.length == Approx(1500));
}

TEST_CASE("A step inside a log's height cuts its underside level") {
    Shell shell = test::plain_shell();
    const double whole = wood_of(lay_out(shell), bodies_of(lay_out(shell)));
    shell.steps = {step("A", 1500, 2000, 330)}; // a round, and 100 of the second log
    const Layout layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(sound(layout));
    CHECK(whole - wood_of(layout, bodies_of(layout)) == Approx((210.0 + 100) * 2000 * 200).epsilon(1e-9));
    const auto over = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                   [](const Piece &p) { return p.tag == "A-02-1"; });
    const auto box = std::find_if(over->cuts.begin(), over->cuts.end(),
                                  [](const Cut &c) { return std::holds_alternative<BoxCut>(c); });
    REQUIRE(box != over->cuts.end());
    CHECK(std::get<BoxCut>(*box).use == BoxUse::step);
    CHECK(std::get<BoxCut>(*box).box.high.z == Approx(100));
}

TEST_CASE("A step that takes in a corner is stated by both walls, and the lowest log stands on it") {
    Shell shell = test::plain_shell();
    shell.steps = {step("A", 3000, 2000, 230)};
    Layout layout = lay_out(shell);
    CHECK(has(layout.findings, "step-at-corner-differs"));
    CHECK(layout.pieces.empty());
    shell.steps.push_back(step("B", 0, 2500, 230));
    layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(sound(layout));
    const Cell under = box_cell({{3000, -1000, -1000}, {6000, 2500, 230}});
    const Bodies bodies = bodies_of(layout);
    for (const Piece &p : layout.pieces)
        for (const Cell &cell : bodies[p.model].cells)
            CHECK(common_volume(moved(cell, p.frame), under) == 0);
}

TEST_CASE("A wall that stands wholly higher starts with logs of its own height, half logs halved again") {
    Shell shell = test::plain_shell();
    shell.steps = {step("B", 0, 4000, 230), step("A", 2500, 2500, 230), step("C", 0, 2500, 230)};
    const Layout layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(sound(layout));
    const auto first = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                    [](const Piece &p) { return p.wall == Index<WallPlace>(1); });
    CHECK(first->frame.origin.z == Approx(230)); // level, without a cut of its own
    CHECK(first->blank.height == Approx(115 - 20));
}

TEST_CASE("Steps that cannot be built on are findings with what would fit") {
    const auto code = [](const FoundationStep &s) {
        Shell shell = test::plain_shell();
        shell.steps = {s};
        const Layout layout = lay_out(shell);
        CHECK(layout.pieces.empty());
        return layout.findings.empty() ? std::string() : layout.findings.front().code;
    };
    CHECK(code(step("Q", 0, 1000, 230)) == "step-without-wall");
    CHECK(code(step("A", 1000, 0, 230)) == "step-empty");
    CHECK(code(step("A", 4000, 1500, 230)) == "step-off-wall");
    CHECK(code(step("A", 1500, 1000, 2000)) == "step-over-wall");
    CHECK(code(step("A", 100, 1000, 230)) == "step-cuts-corner");
    CHECK(code(step("A", 1000, 3900, 230)) == "step-cuts-corner");
    Shell two = test::plain_shell();
    two.steps = {step("A", 1000, 1000, 230), step("A", 1500, 1000, 230)};
    CHECK(has(lay_out(two).findings, "steps-too-close"));
    two.steps[1].from_left = Length::mm(2000);
    two.steps[1].rise = Length::mm(460);
    CHECK(sound(lay_out(two))); // side by side, going up
    Shell door = test::plain_shell();
    door.openings = {
        {"door", OpeningKind::door, "A", Length::mm(1500), {}, Length::mm(900), Length::mm(600)}};
    door.steps = {step("A", 1000, 3000, 230)};
    CHECK(has(lay_out(door).findings, "opening-meets-step"));
    door.openings[0].sill = Length::mm(230);
    CHECK_FALSE(has_errors(lay_out(door).findings));
    CHECK(sound(lay_out(door)));
}

TEST_CASE("A log over the step, or of which little is left, is warned of") {
    Shell shell = test::plain_shell();
    shell.steps = {step("A", 1500, 2000, 215)}; // in the gap
    CHECK(has(lay_out(shell).findings, "log-over-step"));
    shell.steps[0].rise = Length::mm(420);
    CHECK(has(lay_out(shell).findings, "thin-wood-on-step"));
}

TEST_CASE("Random shells on stepped foundations keep their wood and can be raised") {
    int laid = 0, alone = 0;
    test::ThrownAway thrown({"tail-too-thin", "opening-meets-step", "step-over-wall", "opening-over-wall"});
    CHECK(rc::check([&] {
        Shell shell = test::any_stepped_shell();
        const Layout layout = lay_out(shell);
        thrown.discard_refused(layout.findings);
        RC_ASSERT(sound(layout));
        Shell flat = shell;
        flat.steps.clear();
        flat.pegs.wanted = shell.pegs.wanted = false;
        const Layout on_flat = lay_out(flat), on_steps = lay_out(shell);
        RC_ASSERT(!has_errors(on_steps.findings));
        if (has_errors(
                on_flat.findings)) { // an opening that only a step keeps from the foundation's corner, say
            ++alone;
            return;
        }
        const double lost = wood_of(on_flat, bodies_of(on_flat)) - wood_of(on_steps, bodies_of(on_steps));
        RC_ASSERT(lost > 0);
        // In the middle of a wall a step takes what lay in it, and nothing else.
        if (shell.steps.size() == 1) RC_ASSERT(std::abs(lost - wood_in(on_flat, shell.steps[0])) < 1);
        double lowest_allowed = 0;
        for (const Piece &p : on_steps.pieces) {
            const Box3 box = bounds(bodies_of(on_steps)[p.model].hewn);
            lowest_allowed = std::min(lowest_allowed, box.low.z + p.frame.origin.z);
        }
        RC_ASSERT(lowest_allowed > -1e-9);
        ++laid;
    }));
    INFO(thrown.words() << "; " << alone << " are none without their step");
    CHECK(laid >= 90);
    CHECK(alone <= 10);
    CHECK(thrown.share() < 0.6); // half of the random openings lie over the random step's edge
}

TEST_CASE(
    "Where a step carries a whole wall, floors and bores find its first log or are refused with words") {
    Shell shell = test::plain_shell(); // 5 m x 4 m, pitch 230 mm
    shell.steps = {step("A", 0, 5000, 460), step("B", 0, 1500, 460), step("D", 2500, 1500, 460)};
    Floor floor;
    floor.name = "G";
    floor.from = "A";
    floor.to = "C";
    floor.level = Length::mm(400); // under all that stands of wall A
    shell.floors = {floor};
    CHECK(has(lay_out(shell).findings, "timber-misses-wall"));

    shell.floors[0].level = Length::mm(750);
    StatedBore rod;
    rod.wall = "A";
    rod.from_left = Length::mm(2200); // between two joists
    shell.bores = {rod};              // from round 1, which is not there
    const Layout bored = lay_out(shell);
    REQUIRE(has(bored.findings, "bore-misses-log"));
    CHECK(bored.pieces.empty());

    shell.bores[0].from_round = 3;
    const Layout built = lay_out(shell);
    INFO(words(built.findings));
    CHECK_FALSE(has_errors(built.findings));
    CHECK(sound(built));
}

TEST_CASE("A step that takes in a slanting corner carries the logs out to their furthest arris") {
    Shell shell = test::plain_shell();
    shell.walls = test::octagon_plan(Length::mm(3000));
    shell.notch.kind = NotchKind::square_lap;
    shell.steps = {step("A", 1500, 1500, 300), step("B", 0, 1500, 300)};
    const Layout layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    // B's outside face starts at A's corner, 3000 from the left, and at 45 degrees is 200 further on where it
    // leaves A, 200 thick. So A's logs reach to 3200, and B's 200 past their own corner.
    REQUIRE(layout.steps.size() == 2);
    CHECK(layout.steps[0].to >= 3200);
    CHECK(layout.steps[1].from <= -200);
    const Cell under = box_cell({{1500, -500, -500}, {4000, 200, 300}});
    const Bodies bodies = bodies_of(layout);
    double wood = 0;
    for (const Piece &p : layout.pieces)
        for (const Cell &cell : bodies[p.model].cells)
            wood += common_volume(moved(cell, p.frame), under);
    CHECK(wood == 0);
}

TEST_CASE("Steps that overlap are said, and nothing that only follows from it") {
    Shell shell = test::plain_shell();
    // The second also takes in corner AB without a step of B's: which of the two is meant is not known.
    shell.steps = {step("A", 1000, 2000, 230), step("A", 2500, 2500, 230)};
    const Layout layout = lay_out(shell);
    REQUIRE(layout.findings.size() == 1);
    CHECK(layout.findings[0].code == "steps-too-close");
    CHECK(layout.findings[0].weight == Weight::error);
}

TEST_CASE("A step keeps its distance from a wall that meets at a slant, from its nearest arris on") {
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(Length::mm(10000), Length::mm(4000));
    Partition partition = test::partition("P", "A", Length::mm(2500), "C");
    partition.heading = 45;
    shell.partitions = {partition};
    const auto warned = [&](double from, double to) {
        shell.steps = {step("A", from, to - from, 230)};
        const Layout layout = lay_out(shell);
        INFO(words(layout.findings));
        CHECK_FALSE(layout.pieces.empty());
        return has(layout.findings, "step-cuts-corner");
    };
    // P's middle line crosses A's at 2500. Its faces cross there 100 * sqrt(2) to either side, and run on as
    // far as half of A's thickness, 100, from there: from 2258.6 to 2741.4. The step keeps 100 from that, and
    // whoever states the offered 2159 or 2841, which are rounded, is not told again.
    CHECK_FALSE(warned(1000, 2159));
    CHECK(warned(1000, 2161));
    CHECK(warned(2839, 4500));
    CHECK_FALSE(warned(2841, 4500));
}

TEST_CASE("A step too near an end of its wall is told the one side of that corner that there is") {
    // Wall A is 5 m long, its notches 200 mm of either end: 100 mm of whole logs stay beside them.
    Shell shell = test::plain_shell();
    const auto told = [&shell](const FoundationStep &s) {
        shell.steps = {s};
        const Findings findings = lay_out(shell).findings;
        const auto found = std::ranges::find(findings, "step-cuts-corner", &Finding::code);
        return found == findings.end() ? std::string() : test::message(*found);
    };
    CHECK_THAT(
        told(step("A", 100, 1000, 230)),
        ContainsSubstring("; it fits from 300 mm on, or where it takes the corner in, to the wall's end"));
    CHECK_THAT(
        told(step("A", 1000, 3900, 230)),
        ContainsSubstring("; it fits up to 4700 mm, or where it takes the corner in, to the wall's end"));
    CHECK(told(step("A", 300, 1000, 230)).empty());
    CHECK(told(step("A", 1000, 3700, 230)).empty());
}

TEST_CASE("No place of a step is told that lies in the notches of the next wall") {
    // P's notches take 350 to 550 of wall A: a step that ends 100 mm left of there would lie within 100 mm of
    // those of corner DA, which take the first 200.
    Shell shell = test::plain_shell();
    shell.partitions = {test::partition("P", "A", Length::mm(450), "C")};
    shell.steps = {step("A", 500, 1000, 230)};
    const Findings findings = lay_out(shell).findings;
    REQUIRE(has(findings, "step-cuts-corner"));
    const auto found = std::ranges::find(findings, "step-cuts-corner", &Finding::code);
    CHECK_THAT(test::message(*found), ContainsSubstring("; it fits from 650 mm on"));
}
