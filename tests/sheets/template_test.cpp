// Paper and files at full size: templates, story poles.

#include "exporters/sheets/pattern/joints.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/sheets/pole/story_pole.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

/// What the border has of a log's end: the face of an upright plane that lies farthest that way.
struct EndFace {
    double area = 0, width = 0;
};

EndFace end_face(const Polyhedron &wood, End end) {
    const double way = end == End::datum ? -1 : 1;
    const Face *found = nullptr;
    double farthest = -1e9;
    for (const Face &face : wood.faces) {
        if (way * face.plane.normal.x < 0.5 || std::abs(face.plane.normal.z) > 1e-9) continue;
        double reach = -1e9;
        for (const int v : face.loops[0])
            reach = std::max(reach, way * wood.vertices[static_cast<std::size_t>(v)].x);
        if (reach > farthest) farthest = reach, found = &face;
    }
    if (found == nullptr) return {};
    double low = 1e9, high = -1e9;
    for (const int v : found->loops[0]) {
        const Vec3 p = wood.vertices[static_cast<std::size_t>(v)];
        const double along = p.y * found->plane.normal.x - p.x * found->plane.normal.y;
        low = std::min(low, along), high = std::max(high, along);
    }
    return {area(wood, *found), high - low};
}

} // namespace

// The plain shell's tails are worked out by hand: 200 mm of tail, 1:8 both ways, 210 mm high logs.
TEST_CASE("a template's outline is that of its tail") {
    const LaidShell shell = laid(plain_shell());
    const auto joints = distinct_joints(shell.layout);
    const Piece *piece = nullptr; // a full log with seams over and under its tail
    for (const Piece &p : shell.layout.pieces)
        if (p.tag == "A-02-1") piece = &p;
    REQUIRE(piece != nullptr);
    const auto joint = std::find_if(joints.begin(), joints.end(), [](const Joint &j) {
        return j.end == End::datum && std::count(j.tags.begin(), j.tags.end(), "A-02-1") > 0;
    });
    REQUIRE(joint != joints.end());
    const auto ring = outline_of(*joint, true);
    // full height past the shoulder: 60 mm; the tail on the outside face: a trapezium 200 long
    double outer = 0, inner = 0,
           inside = 0; // heights of the tail: at the end, at the shoulder; inside at the end
    for (const JointCut &cut : joint->cuts) {
        outer += cut.side == Side::top ? cut.outside_near : -cut.outside_near;
        inner += cut.side == Side::top ? cut.outside_far : -cut.outside_far;
        inside += cut.side == Side::top ? cut.inside_near : -cut.inside_near;
        CHECK(std::abs(cut.outside_near - cut.outside_far) == Approx(25)); // 1:8 over 200
        CHECK(std::abs(cut.outside_near - cut.inside_near) == Approx(25));
        CHECK(cut.far.outside == Approx(200));
        CHECK(cut.far.inside == Approx(200));
    }
    CHECK(area_of(ring) == Approx(past_shoulder * 210 + (outer + inner) / 2 * 200));
    CHECK(area_of(end_outline_of(*joint)) == Approx((outer + inside) / 2 * 200));
    CHECK(inside == Approx(outer + 2 * 25)); // top and underside both slope 1:8 across
}

// A bay turned by 45 degrees: its logs end at half of that to the square, so the end face is wider than the
// wall.
TEST_CASE("the end of a log that is cut at a slant is a template in its true size") {
    Shell bay = plain_shell();
    bay.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                         Length::mm(2000), 45);
    const LaidShell shell = laid(bay);
    int slanting = 0;
    for (const Joint &joint : distinct_joints(shell.layout)) {
        const double slant = std::abs(joint.starts.outside - joint.starts.inside);
        if (slant < 1) continue;
        CHECK(slant ==
              Approx(joint.width)); // the walls cross at 45 degrees, and ends lie in the other wall's face
        const auto ring = end_outline_of(joint);
        REQUIRE(ring.size() == 4);
        CHECK(length(ring[0] - Vec2{ring[2].x, ring[0].y}) == Approx(std::sqrt(2.0) * joint.width));
        ++slanting;
    }
    CHECK(slanting > 0);
}

// Where walls are not square an end is cut where the log is already thinner, or not yet: against the exact
// border.
TEST_CASE("the end templates of tapered logs are as wide as their ends, at slanting corners too") {
    Shell bay = plain_shell();
    bay.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                         Length::mm(2000), 45);
    bay.logs.butt_height = Length::mm(216);
    bay.logs.tip_height = Length::mm(204);
    bay.logs.tip_width = Length::mm(150);
    const LaidShell shell = laid(bay);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    int slanting = 0, square = 0;
    for (const Joint &joint : distinct_joints(shell.layout)) {
        const auto ring = end_outline_of(joint);
        if (ring.empty() || joint.within) continue;
        const Piece *piece = nullptr;
        for (const Piece &p : shell.layout.pieces)
            if (p.tag == joint.tags.front()) piece = &p;
        REQUIRE(piece != nullptr);
        INFO(joint.name << " of " << piece->tag);
        const EndFace end = end_face(shell.bodies[piece->model].hewn, joint.end);
        CHECK(area_of(ring) == Approx(end.area).epsilon(1e-6));
        CHECK(length(ring[0] - Vec2{ring[2].x, ring[0].y}) == Approx(end.width).margin(1e-4));
        ++(std::abs(joint.starts.outside - joint.starts.inside) > 1 ? slanting : square);
    }
    CHECK(slanting > 4);
    CHECK(square > 4);
}

namespace {

Shell with_tailed_joists() {
    Shell house = plain_shell();
    house.rounds.count = 8;
    house.floors = {tailed_joists("G", "A", "C", 690, {Length::mm(100), Length::mm(160)}, 75, 1.0 / 5)};
    return house;
}

} // namespace

// By hand: a joist 100 wide at its butt and 80 at its tip narrows by a fifth; its template is as wide as it
// is there.
TEST_CASE("templates of tapering joists and of pockets in tapering logs follow the faces as hewn") {
    Shell house = with_tailed_joists();
    house.logs.tip_width = Length::mm(150);
    house.floors[0].tip_width = Length::mm(80);
    const LaidShell shell = laid(house);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    int ends = 0, pockets = 0;
    for (const Pattern &pattern : patterns_of(shell.layout)) {
        if (pattern.stands) continue;
        const auto &ring = pattern.faces.at(0).outline;
        for (const Piece &piece : shell.layout.pieces) {
            if (piece.tag != pattern.tags.front()) continue;
            const Features features = features_of(piece);
            const auto deepest =
                std::max_element(ring.begin(), ring.end(), [](Vec2 a, Vec2 b) { return a.x < b.x; });
            if (pattern.where.starts_with("pocket")) {
                ++pockets;
                const auto same = [&](const Pocket &p) {
                    return std::abs(p.depth - deepest->x) < 0.01 &&
                           std::abs(p.width_at_face - pattern.width) < 0.01;
                };
                CHECK(std::any_of(features.pockets.begin(), features.pockets.end(), same));
                continue;
            }
            ++ends;
            const auto wide = [&](double x) { return features.innermost(x) - features.outermost(x); };
            const double from_datum = wide(deepest->x), from_far = wide(piece.blank.length - deepest->x);
            const double at_edge = 2 * std::abs(deepest->y);
            CHECK(std::min(std::abs(at_edge - from_datum), std::abs(at_edge - from_far)) < 0.01);
        }
    }
    CHECK(ends >= 2); // butt and tip
    CHECK(pockets >= 2);
}

TEST_CASE("tailed joists and their pockets have templates from above") {
    const LaidShell shell = laid(with_tailed_joists());
    REQUIRE_FALSE(shell.layout.pieces.empty());
    int ends = 0, pockets = 0;
    for (const Pattern &pattern : patterns_of(shell.layout)) {
        if (pattern.stands) continue;
        const auto &ring = pattern.faces.at(0).outline;
        const bool pocket = pattern.where.starts_with("pocket");
        pocket ? ++pockets : ++ends;
        INFO(pattern.where);
        // the end is as wide as the joist and narrows by 15 mm on either side over 75 mm
        const double tail = 75 * (100 + 70) / 2.0;
        CHECK(area_of(ring) == Approx(pocket ? tail : tail + past_shoulder * 100).epsilon(0.02));
        CHECK(pattern.tags.size() >= 2);
    }
    CHECK(ends == 1);
    CHECK(pockets == 1);
}

// Logs of equal height lie half a pitch apart in the two walls of a corner, so seams do too.
TEST_CASE("a story pole has every seam and every log of its corner") {
    Shell plain = plain_shell();
    plain.notch.kind = NotchKind::square_lap;
    const LaidShell shell = laid(plain);
    for (const CornerPlace &corner : shell.layout.corners) {
        std::vector<double> seams, logs;
        for (const PoleMark &mark : pole_marks(shell.layout, corner))
            (mark.seam ? seams : logs).push_back(mark.z);
        REQUIRE(seams.size() >= 6);
        for (std::size_t i = 2; i + 1 < seams.size(); ++i)
            CHECK(seams[i] - seams[i - 1] == Approx(115));
        CHECK(std::is_sorted(logs.begin(), logs.end()));
        CHECK(logs.back() == Approx(4 * 230 - 20));
    }
    const auto sheets = full_size_poles(shell.shell, shell.layout, full_options());
    CHECK(all_clashes(sheets) == "");
    REQUIRE_FALSE(sheets.empty());
}
