// Floors of houses that stand a little off square: joists between walls that are not quite parallel.
#include "kernel/document/document.h"
#include "kernel/layout/floors/room.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/layout/wood/interference.h"
#include "tests/layout/floored_bodies.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/pieces.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <sstream>

using namespace roundlay;
using roundlay::test::piece;
using test::floored;
using test::laid;

namespace {

/// The outer walls anew, from corner to corner.
void walk(Shell &shell, const std::vector<Vec2> &corners) {
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Vec2 way = corners[(i + 1) % corners.size()] - corners[i];
        shell.walls[i].heading = std::atan2(way.y, way.x) * 180 / std::numbers::pi;
        shell.walls[i].length = Length::mm(length(way));
        shell.walls[i].closes = false;
    }
}

/// 5 m by 4 m, its corner between B and C moved out so that wall C runs off wall A by that.
Shell spread(double by) {
    Shell shell = floored();
    walk(shell, {{0, 0}, {5000, 0}, {5000, 4000 + by * 5000}, {0, 4000}});
    return shell;
}

/// How deep an end lies behind its wall's face, on either side of the timber.
std::array<double, 2> depths(const Layout &layout, const Body &body, const Timber &timber, End end) {
    const FloorPlace &floor = layout.floors[timber.floor];
    const Piece &own = layout.pieces[timber.piece];
    const WallPlace &wall = layout.walls[end == End::datum ? floor.from : floor.to];
    const Vec3 middle = wall.frame.to_local(floor.frame.to_world({timber.from.x, floor.depth / 2, 0}));
    std::array<double, 2> deepest{};
    for (const Vec3 vertex : body.hewn.vertices) {
        const double tip = end == End::datum ? vertex.x : own.blank.length - vertex.x;
        if (tip > own.blank.width) continue; // of the other end, a notch or a shoulder
        const double y = wall.frame.to_local(own.frame.to_world(vertex)).y;
        const double deep = middle.y > wall.thickness / 2 ? wall.thickness - y : y;
        double &side = deepest[vertex.y < own.blank.width / 2 ? 0 : 1];
        side = std::max(side, deep);
    }
    return deepest;
}

/// Every joist lies in both its walls by what is stated, square to the wall and on both its sides.
void check_bearings(const Layout &layout) {
    for (const Timber &timber : layout.timbers) {
        if (timber.use != TimberUse::joist) continue;
        const Body body = body_of(layout.pieces[timber.piece]); // its own: alike ones share a model
        for (const End end : {End::datum, End::far}) {
            const double bearing = end == End::datum ? timber.bearing_from : timber.bearing_to;
            for (const double deep : depths(layout, body, timber, end))
                RC_ASSERT(std::abs(deep - bearing) < 1e-6);
        }
    }
}

/// Each corner moved by up to so much.
std::vector<Vec2> jittered(const Plan &plan, std::size_t outer, int most) {
    std::vector<Vec2> corners;
    for (std::size_t i = 0; i < outer; ++i) {
        const Vec3 at = plan.walls[Index<WallPlace>(i)].frame.origin;
        corners.push_back(
            {at.x + *rc::gen::inRange(-most, most + 1), at.y + *rc::gen::inRange(-most, most + 1)});
    }
    return corners;
}

struct Drawn {
    int laid = 0, askew = 0, beams = 0, tailed = 0, refused = 0;
};

bool is_askew(const Layout &layout) {
    return std::ranges::any_of(layout.floors, [](const FloorPlace &f) { return std::abs(f.rise) > 1e-4; });
}

int between(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}

/// A room with joists that fit it, of any size and kind.
Shell any_floored() {
    Shell shell = floored();
    const double wide = between(3500, 7000), deep = between(3000, 6000);
    walk(shell, {{0, 0}, {wide, 0}, {wide, deep}, {0, deep}});
    Floor &floor = shell.floors[0];
    if (between(0, 1)) floor.from = "C", floor.to = "A";
    floor.spacing = Length::mm(between(400, 900));
    floor.joist.width = Length::mm(between(60, 140));
    floor.bearing = Length::mm(between(50, 120));
    if (between(0, 2) == 0) floor.tip_width = Length::mm(between(50, 60));
    if (between(0, 2) == 0) floor.tip_height = Length::mm(between(150, 180));
    if (between(0, 1)) floor.pocket = PocketKind::tailed;
    if (between(0, 2) == 0) floor.beams = {{Length::mm(deep / 2), {Length::mm(150), Length::mm(180)}}};
    if (floor.beams.empty() && between(0, 2) == 0)
        floor.openings = {{"stair", Length::mm(between(0, 1) * between(900, 1200)), Length::mm(700),
                           Length::mm(900), Length::mm(1000)}};
    return shell;
}

void check_one(Drawn &drawn) {
    Shell shell = between(0, 3) ? any_floored() : test::any_fitted_shell();
    const Found<Plan> plan = lay_out_plan(shell);
    if (shell.floors.size() != 1 || !stand(plan)) return;
    walk(shell, jittered(plan, shell.walls.size(), 40));
    const Layout layout = lay_out(shell);
    drawn.refused += has_errors(layout.findings);
    if (has_errors(layout.findings)) return;
    const auto bodies = bodies_of(layout);
    for (const Overlap &o : overlaps(layout, bodies))
        RC_FAIL(layout.pieces[o.a].tag + " and " + layout.pieces[o.b].tag + " share " +
                std::to_string(o.volume) + "\n" + write_document(shell));
    const bool closed = test::has(layout.findings, "pocket-closed");
    for (const Blocked &b : blocked_on_the_way_down(layout, bodies))
        if (!closed || !layout.pieces[b.piece].timber)
            RC_FAIL(layout.pieces[b.piece].tag + " is blocked by " + layout.pieces[b.by].tag + "\n" +
                    write_document(shell));
    for (const Body &body : bodies)
        if (!is_closed(body.hewn)) RC_FAIL("a body is not closed\n" + write_document(shell));
    check_bearings(layout);
    ++drawn.laid, drawn.askew += is_askew(layout);
    drawn.beams += static_cast<int>(test::timbers(layout, TimberUse::beam).size());
    drawn.tailed += shell.floors[0].pocket == PocketKind::tailed;
}

} // namespace

TEST_CASE(
    "Between walls that are not quite parallel each joist has its own length and is sawn along its wall") {
    const double by = 0.01;
    const Layout layout = laid(spread(by));
    CHECK(test::clean(layout));
    const FloorPlace &floor = layout.floors[Index<FloorPlace>(0)];
    CHECK(floor.rise == Approx(by));
    // Wall C is 200 mm thick, square to itself: its inside face lies 200 * hypot(1, by) nearer along y.
    const double inside = 4000 - 200 - 200 * std::hypot(1, by); // from A's inside face at x = 0 of the house
    for (const Timber &t : test::timbers(layout, TimberUse::joist)) {
        const double x = floor.frame.origin.x + t.from.x;
        CHECK(t.to.y - t.from.y == Approx(inside + by * x).margin(1e-6));
        const Piece &joist = layout.pieces[t.piece];
        // As long as its longer side, half a joist's width to the right of its middle, and both bearings.
        CHECK(joist.blank.length ==
              Approx(80 + inside + by * (x + 50) + 80 * std::hypot(1, by)).margin(1e-6));
    }
    std::size_t slants = 0;
    for (const Cut &cut : piece(layout, "G-J01").cuts)
        if (const auto *face = std::get_if<FaceCut>(&cut)) {
            CHECK(face->face == LogFace::far_end);
            CHECK(std::abs(face->plane.normal.y / face->plane.normal.x) == Approx(by));
            ++slants;
        }
    CHECK(slants == 1);
}

TEST_CASE("A pocket for a joist that comes in askew is square to its log and holds it") {
    const double by = 0.01;
    const Layout layout = laid(spread(by));
    const Piece &log = piece(layout, piece(layout, "G-J01").far.at);
    for (const Cut &cut : log.cuts)
        if (const auto *pocket = std::get_if<PocketCut>(&cut)) {
            CHECK(std::abs(pocket->y_face - pocket->y_back) == Approx(80));
            // Half of the joist, measured along the wall, and half of what its sides run off over the
            // bearing.
            CHECK(pocket->half_at_back == Approx(50 * std::hypot(1, by) + 80 * by / 2).margin(1e-9));
            CHECK(pocket->half_at_face == Approx(pocket->half_at_back).margin(1e-9));
        }
}

TEST_CASE("Walls face each other up to 1 in 50") {
    CHECK_FALSE(has_errors(lay_out(spread(0.0199)).findings));
    CHECK_THAT(test::words(lay_out(spread(0.0201)).findings), ContainsSubstring("do not face each other"));
}

TEST_CASE("Beams and trimmers end in side walls that are not square to them") {
    Shell shell = floored();
    walk(shell, {{0, 0}, {5000, 0}, {5060, 4000}, {30, 4030}});
    shell.floors[0].beams = {{Length::mm(1600), {Length::mm(200), Length::mm(200)}}};
    const Layout beams = laid(shell);
    CHECK(test::clean(beams));
    REQUIRE(test::timbers(beams, TimberUse::beam).size() == 1);
    shell.floors[0].beams.clear();
    shell.floors[0].openings = {{"stair", Length(), Length::mm(1000), Length::mm(1400), Length::mm(1200)}};
    const Layout trimmed = laid(shell);
    CHECK(test::clean(trimmed));
    CHECK(test::timbers(trimmed, TimberUse::trimmer).size() == 2);
}

TEST_CASE("Random houses off square keep their floors: nothing overlaps, and ends bear by what is stated") {
    Drawn drawn;
    CHECK(rc::check([&] { check_one(drawn); }));
    std::ostringstream line;
    line << drawn.laid << " houses laid, " << drawn.askew << " of them with walls that are not parallel, "
         << drawn.beams << " beams, " << drawn.tailed << " tailed floors; " << drawn.refused << " refused";
    WARN(line.str());
    CHECK(drawn.askew >= 30);
    CHECK(drawn.beams >= 3);
    CHECK(drawn.tailed >= 10);
}

TEST_CASE("The outermost joist carries boards as far as a leaning side wall stands away from it") {
    const double lean = 0.1, thick = 200;
    Shell shell = floored();
    walk(shell, {{0, 0}, {5000, 0}, {5000 + lean * 4000, 4000}, {0, 4000}});
    const Layout layout = laid(shell);
    REQUIRE(layout.timbers.size() > 2);
    std::vector<double> places;
    for (const Timber &t : layout.timbers)
        places.push_back(layout.floors[t.floor].frame.to_world({t.from.x, 0, 0}).x);
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, [&](std::size_t a, std::size_t b) { return places[a] < places[b]; });
    const std::size_t last = order.back(), before = order[order.size() - 2], first = order.front();
    // Where wall C's inside face meets wall B's, which stands further out than anywhere else along the joist.
    const double wall = 5000 + lean * (4000 - thick) - thick * std::hypot(1, lean);
    const double strip = (wall - places[before]) / 2;
    CHECK_THAT(layout.timbers[Index<Timber>(last)].load_width, Catch::Matchers::WithinAbs(strip, 1));
    CHECK(layout.timbers[Index<Timber>(last)].load_width <= strip + 1e-6);
    // Wall D is square.
    CHECK_THAT(layout.timbers[Index<Timber>(first)].load_width,
               Catch::Matchers::WithinAbs((places[order[1]] - thick) / 2, 1e-6));
}
