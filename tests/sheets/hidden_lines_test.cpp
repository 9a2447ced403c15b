// Hidden lines are held against rays: shot through the convex cells of the wood, which the finder of hidden
// lines never looks at.

#include "exporters/sheets/cut_sheet/hidden_lines.h"
#include "exporters/sheets/cut_sheet/wood.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/sheets/support/log.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <limits>
#include <numbers>
#include <sstream>

using namespace roundlay;
using namespace roundlay::sheets;

namespace {

constexpr View all_views[] = {View::top,       View::outside, View::under,    View::inside,
                              View::datum_end, View::far_end, View::isometric};

/// What a ray hits first: a plane of the wood, or nothing.
struct Hit {
    bool any = false;
    Plane plane;

    bool same(const Hit &o) const {
        if (any != o.any) return false;
        return !any || (length(plane.normal - o.plane.normal) < 1e-6 &&
                        std::abs(plane.offset - o.plane.offset) < 1e-3);
    }
};

Hit first_hit(const std::vector<Cell> &cells, const Projection &p, Vec2 flat) {
    // a point over `flat` on the plane through the origin; axes may be enlarged alike (isometric)
    const double k = dot(p.across, p.across);
    const Vec3 at = (flat.x / k) * p.across + (flat.y / k) * p.up;
    Hit best;
    double nearest = -std::numeric_limits<double>::max();
    for (const Cell &cell : cells) {
        double enters = std::numeric_limits<double>::max(), leaves = -enters;
        Plane plane;
        for (const CellFace &face : cell.faces) { // wood where n.(at + t toward) <= offset
            const double speed = dot(face.plane.normal, p.toward), room = -face.plane.distance(at);
            if (std::abs(speed) < 1e-12) {
                if (room < 0) enters = -std::numeric_limits<double>::max();
                continue;
            }
            const double t = room / speed;
            if (speed > 0 && t < enters) {
                enters = t;
                plane = face.plane;
            }
            if (speed < 0) leaves = std::max(leaves, t);
        }
        if (enters <= leaves || enters <= nearest) continue;
        nearest = enters;
        best = {true, plane};
    }
    return best;
}

Scene hewn_scene(const Body &body) {
    Scene scene;
    scene.solids = {body.hewn};
    return scene;
}

std::string text_of(View view, const Stretch &s) {
    std::ostringstream text;
    text << name_of(view, Words(UnitSystem::metric)) << (s.seen == Seen::visible ? " visible " : " hidden ")
         << s.from.x << "," << s.from.y << " to " << s.to.x << "," << s.to.y;
    return text.str();
}

double distance_to(const Stretch &s, Vec2 p) {
    const Vec2 d = s.to - s.from;
    const double t = std::clamp(dot(p - s.from, d) / dot(d, d), 0.0, 1.0);
    return length(p - (s.from + t * d));
}

/// A visible edge parts two planes or wood from air; a hidden one lies behind a single plane, unless another
/// edge is seen in the same place.
std::string wrong_stretch(const Body &body, View view) {
    constexpr double aside = 0.02;
    const Projection p = projection_of(view);
    const auto stretches = tidied(edges_seen(hewn_scene(body), p));
    for (const Stretch &s : stretches) {
        const Vec2 d = s.to - s.from;
        if (length(d) < 0.5) continue;
        const Vec2 side = (aside / length(d)) * Vec2{-d.y, d.x};
        for (const double part : {0.13, 0.5, 0.87}) {
            const Vec2 at = s.from + part * d;
            const auto seen_here = [&](const Stretch &o) {
                return o.seen == Seen::visible && distance_to(o, at) < 3 * aside;
            };
            if (s.seen == Seen::hidden && std::any_of(stretches.begin(), stretches.end(), seen_here))
                continue;
            const bool same = first_hit(body.cells, p, at + side).same(first_hit(body.cells, p, at - side));
            if (same == (s.seen == Seen::visible)) return text_of(view, s);
        }
    }
    return "";
}

/// Between two near points where rays meet different planes, an edge must be seen.
std::string missing_edge(const Body &body, View view) {
    const Projection p = projection_of(view);
    auto stretches = tidied(edges_seen(hewn_scene(body), p));
    std::erase_if(stretches, [](const Stretch &s) { return s.seen == Seen::hidden; });
    const Box3 box = bounds(body.hewn);
    for (int i = 0; i < 300; ++i) {
        const auto any = [](double a, double b) {
            return a + (b - a) * *rc::gen::inRange(0, 100000) / 100000.0;
        };
        const Vec2 at =
            p.flat({any(box.low.x, box.high.x), any(box.low.y, box.high.y), any(box.low.z, box.high.z)});
        const Vec2 next = at + Vec2{any(-20, 20), any(-20, 20)};
        if (first_hit(body.cells, p, at).same(first_hit(body.cells, p, next))) continue;
        const double reach = length(next - at) + 1e-3;
        const bool seen = std::any_of(stretches.begin(), stretches.end(),
                                      [&](const Stretch &s) { return distance_to(s, at) <= reach; });
        if (!seen)
            return std::string(name_of(view, Words(UnitSystem::metric))) + " near " + std::to_string(at.x) +
                   ", " + std::to_string(at.y);
    }
    return "";
}

const Piece &any_piece(const Layout &layout) {
    return layout.pieces[Index<Piece>(*rc::gen::inRange(0, count_of(layout.pieces)))];
}

} // namespace

TEST_CASE("edges are seen and hidden as rays through the wood say, on any piece of any shell") {
    test::ThrownAway thrown(test::refusals());
    CHECK(rc::check([&] {
        const Layout layout = lay_out(test::any_shell());
        thrown.discard_refused(layout.findings);
        const Body body = body_of(any_piece(layout));
        for (const View view : all_views) {
            const std::string wrong = wrong_stretch(body, view);
            if (!wrong.empty()) RC_FAIL(wrong);
            const std::string missing = missing_edge(body, view);
            if (!missing.empty()) RC_FAIL("no edge: " + missing);
        }
    }));
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("a bore's rim is seen from above and its depth is hidden from the side") {
    Piece piece;
    piece.blank = {1000, 200, 230};
    piece.cuts.emplace_back(test::peg(500, false));
    const Body body = body_of(piece);

    const auto side = tidied(edges_seen(whole_scene(body, View::outside), projection_of(View::outside)));
    int hidden = 0;
    for (const Stretch &s : side) {
        if (s.seen == Seen::visible) continue;
        ++hidden;
        CHECK(s.from.x == Approx(484));
        CHECK(s.to.x == Approx(516));
        CHECK(s.from.y == Approx(115));
    }
    CHECK(hidden == 1);

    // 120 degrees of the rim's far half would be cut off if the opening were not looked through
    const auto iso = edges_seen(whole_scene(body, View::isometric), projection_of(View::isometric));
    double rim = 0;
    const double top = dot({500, 100, 230}, projection_of(View::isometric).up);
    for (const Stretch &s : iso)
        if (s.seen == Seen::visible && std::abs(s.from.y - top) < 20 && length(s.to - s.from) < 5)
            rim += length(s.to - s.from);
    // an ellipse whose long axis is sqrt(3/2) and short axis sqrt(1/2) of the diameter (ISO 5456-3, from
    // memory)
    const double a = 16 * std::sqrt(1.5), b = 16 * std::sqrt(0.5);
    const double around =
        std::numbers::pi * (3 * (a + b) - std::sqrt((3 * a + b) * (a + 3 * b))); // Ramanujan
    CHECK(rim == Approx(around).epsilon(0.01));
}

TEST_CASE("a broken log shows its parts side by side with the left-out stretch gone") {
    Piece piece;
    piece.blank = {5000, 200, 230};
    const Body body = body_of(piece);
    const Ruler ruler({{0, 500}, {4500, 5000}}, 0.1);
    const Scene scene = broken_scene(body, ruler);
    REQUIRE(scene.solids.size() == 2);
    CHECK(volume(scene.solids[0]) == Approx(500.0 * 200 * 230));
    CHECK(bounds(scene.solids[1]).low.x == Approx(500 + Ruler::gap / 0.1));
    CHECK(scene.breaks.size() == 2);
    const auto edges = edges_seen(scene, projection_of(View::outside));
    CHECK(std::count_if(edges.begin(), edges.end(), [](const Stretch &s) { return s.cut_off; }) > 0);
}
