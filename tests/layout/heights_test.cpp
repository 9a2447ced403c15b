// Rounds and seams against trade figures and the geometry of the tail.

#include "kernel/layout/corners/notch.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/pieces.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using namespace roundlay;
using roundlay::test::piece;

namespace {

const SeamCut &seam(const Piece &p, End end, Side side) {
    for (const Cut &cut : p.cuts)
        if (const auto *s = std::get_if<SeamCut>(&cut); s && s->end == end && s->side == side) return *s;
    throw std::runtime_error("no such seam on " + p.tag);
}

} // namespace

TEST_CASE("15 rounds at 8 2/3 in rise 10 ft 10 in") { // common practice, no source
    Shell shell = test::plain_shell();
    shell.rounds = {15, std::nullopt, Length::inches(26.0 / 3), Length::mm(0), "", TopRule::level};
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(layout.height == Approx(Length::feet(10).mm() + Length::inches(10).mm()).epsilon(1e-14));
    REQUIRE(layout.heights.size() == layout.walls.size());
    for (const WallHeights &wall : layout.heights)
        CHECK(wall.top == Approx(layout.height));
}

TEST_CASE("A stated height and count give the pitch; a height and pitch give the nearest count") {
    Shell shell = test::plain_shell();
    shell.rounds = {10, Length::mm(2300), std::nullopt, Length::mm(20), "", TopRule::level};
    CHECK(lay_out(shell).pitch == Approx(230));
    shell.rounds = {std::nullopt, Length::mm(2400), Length::mm(230), Length::mm(20), "", TopRule::level};
    const Layout fitted = lay_out(shell);
    CHECK(fitted.rounds == 10);
    CHECK(fitted.pitch == Approx(240));
    REQUIRE(fitted.findings.size() >= 1);
    CHECK(fitted.findings[0].code == "pitch-fitted");
}

TEST_CASE("Tails are half the pitch thick and bodies are centred on them") {
    const Layout layout = lay_out(test::plain_shell()); // pitch 230, gap 20, 1:8, 200 mm walls
    const Piece &p = piece(layout, "A-02-1");
    const double centre_x = 100, centre_y = 100; // where the centre lines cross
    const double top = seam(p, End::datum, Side::top).seam.height_at(centre_x, centre_y);
    const double under = seam(p, End::datum, Side::under).seam.height_at(centre_x, centre_y);
    CHECK(top - under == Approx(115));
    CHECK((top + under) / 2 == Approx(p.blank.height / 2));
}

TEST_CASE("A full dovetail of 1:8 in 200 mm walls has a tail 50 mm thicker at its end") {
    const Layout layout = lay_out(test::plain_shell());
    const Piece &p = piece(layout, "A-02-1");
    const auto thickness = [&](double x, double y) {
        return seam(p, End::far, Side::top).seam.height_at(x, y) -
               seam(p, End::far, Side::under).seam.height_at(x, y);
    };
    const double end = p.blank.length, shoulder = p.far.shoulder;
    CHECK(shoulder == Approx(end - 200));
    // lock = 2 s: over the 200 mm of the tail it thickens by 200 * 2/8 = 50 mm, at every depth alike
    CHECK(thickness(end, 0) - thickness(shoulder, 0) == Approx(50));
    CHECK(thickness(end, 200) - thickness(shoulder, 200) == Approx(50));
    // and it thins toward the outside by the same, where the crossing log's tail thickens
    CHECK(thickness(end, 0) < thickness(end, 200));
}

TEST_CASE("The 3-4-5 layout of a 12 in log 6 in thick is a 1:8 full dovetail") {
    // Traditional woodworking book text (NOT-345, NOT-345-SLOPE): height 16 parts, cuts 3-4-4-5 parts at the
    // four corners of the joint, mating cuts sum to 8 parts; slope (H/16)/W = 1:8. Read there, corners by
    // our own reading.
    Shell shell = test::plain_shell();
    shell.thickness = Length::inches(6);
    shell.rounds = {4, std::nullopt, Length::inches(12), Length::mm(0), "", TopRule::level};
    shell.notch.slope = Slope::rise_per_run(1.0 / 8);
    shell.notch.least_tail = Length::mm(10);
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    const Piece &p = piece(layout, "A-02-1");
    const double part = Length::inches(12).mm() / 16;
    const Plane top = seam(p, End::far, Side::top).seam;
    const auto depth = [&](double x, double y) { return (p.blank.height - top.height_at(x, y)) / part; };
    const double end = p.blank.length, shoulder = p.far.shoulder, inside = p.blank.width;
    CHECK(depth(end, inside) == Approx(3));
    CHECK(depth(end, 0) == Approx(4));
    CHECK(depth(shoulder, inside) == Approx(4));
    CHECK(depth(shoulder, 0) == Approx(5));
}

TEST_CASE("Half logs lap where their tail keeps the least thickness, else they stand between the walls") {
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::square_lap; // tail of the half log: 230/4 - 20/2 = 47.5 mm
    shell.notch.least_tail = Length::mm(47);
    CHECK(piece(lay_out(shell), "B-01-1").datum.kind == EndKind::corner);
    shell.notch.least_tail = Length::mm(48);
    const Layout butting = lay_out(shell);
    const Piece &half = piece(butting, "B-01-1");
    CHECK(half.datum.kind == EndKind::butt);
    CHECK(half.blank.length == Approx(4000 - 400));
    CHECK(half.blank.height == Approx(230.0 / 2 - 20));
}

TEST_CASE("All walls close at the same height when the top is level") {
    const Shell shell = test::plain_shell();
    const Layout layout = lay_out(shell);
    for (const WallHeights &wall : layout.heights)
        CHECK(wall.top == Approx(4 * 230 - 20));
}

TEST_CASE("A staggered top leaves every second wall half a round higher") {
    Shell shell = test::plain_shell();
    shell.rounds.top = TopRule::staggered;
    const Layout layout = lay_out(shell);
    CHECK(layout.heights[Index<WallPlace>(1)].top - layout.heights.front().top == Approx(115));
}

TEST_CASE("The tail family's locks") {
    const auto lock_of = [](NotchKind kind) {
        NotchRule rule;
        rule.kind = kind;
        rule.slope = Slope::rise_per_run(0.125);
        const TailTop top = tail_top(rule);
        return lock(top, top);
    };
    CHECK(lock_of(NotchKind::full_dovetail) == 0.25);
    CHECK(lock_of(NotchKind::half_dovetail) == 0.125);
    CHECK(lock_of(NotchKind::square_lap) == 0);
}

namespace {

/// Heights over the foundation of every seam at the first corner, where the centre lines cross; each once.
std::vector<double> seams_at_first_corner(const Layout &layout) {
    const CornerPlace &corner = layout.corners.front();
    std::vector<double> all;
    for (const Piece &p : layout.pieces)
        for (const Cut &cut : p.cuts)
            if (const auto *s = std::get_if<SeamCut>(&cut);
                s && s->corner == corner.name && s->side == Side::top) {
                const Vec3 at = p.frame.to_local({corner.centre.x, corner.centre.y, 0});
                all.push_back(p.frame.origin.z + s->seam.height_at(at.x, at.y));
            }
    std::sort(all.begin(), all.end());
    return all;
}

} // namespace

TEST_CASE(
    "The seams of a corner follow one another by half a pitch, however high the logs of its walls are") {
    CHECK(rc::check([] {
        Shell shell = test::plain_shell(); // pitch 230, gap 20
        const int rounds = *rc::gen::inRange(2, 7);
        shell.rounds.count = rounds;
        shell.rounds.top = *rc::gen::element(TopRule::level, TopRule::staggered);
        for (Wall &wall : shell.walls)
            wall.log_height = Length::mm(*rc::gen::inRange(195, 231));
        const Layout layout = lay_out(shell);
        RC_ASSERT(!layout.pieces.empty());
        const std::vector<double> seams = seams_at_first_corner(layout);
        RC_ASSERT(seams.size() + 3 >=
                  static_cast<std::size_t>(2 * rounds)); // thin half logs may stand between the walls
        const double first = seams.front() < 100 ? 47.5 : 162.5;
        for (std::size_t k = 0; k < seams.size(); ++k)
            if (std::abs(seams[k] - (first + 115 * static_cast<double>(k))) > 1e-9)
                RC_FAIL("seam " + std::to_string(k) + " at " + std::to_string(seams[k]));
    }));
}
