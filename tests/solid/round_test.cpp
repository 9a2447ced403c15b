// Exact solids of round logs: wane, grooves and saddles.
#include "kernel/layout/interference.h"
#include "kernel/solid/build_all.h"
#include "kernel/solid/measures.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Trsf.hxx>
#include <rapidcheck.h>

#include <numbers>

using namespace roundlay;

namespace {

constexpr double pi = std::numbers::pi;
const std::size_t most_pieces = std::getenv("ROUNDLAY_THOROUGH") ? 100'000 : 4;

Piece log_of(double length, double width, double height) {
    Piece p;
    p.blank = {length, width, height};
    p.far.shoulder = length;
    return p;
}

void check_solids(const Layout &layout, std::size_t most, double near) {
    const std::vector<Body> bodies = bodies_of(layout);
    for (std::size_t m = 0; m < std::min(most, bodies.size()); ++m) {
        INFO(layout.pieces[static_cast<std::size_t>(layout.models[m].pieces.front())].tag);
        const Solid solid = build(bodies[m]).solid;
        CHECK(count_solids(solid) == 1);
        CHECK(is_valid(solid));
        CHECK(volume(solid) == Approx(bodies[m].volume).epsilon(near));
        CHECK(length(measures_of(solid).centroid - bodies[m].centroid) < 1);
    }
}

TopoDS_Shape placed(const TopoDS_Shape &shape, const Frame &f) {
    gp_Trsf move;
    move.SetValues(f.x.x, f.y.x, f.z.x, f.origin.x, f.x.y, f.y.y, f.z.y, f.origin.y, f.x.z, f.y.z, f.z.z, f.origin.z);
    return BRepBuilderAPI_Transform(shape, move, true).Shape();
}

} // namespace

TEST_CASE("A round log with and without flats has its closed volume") {
    Piece whole = log_of(4000, 300, 300);
    whole.cuts = {RoundCut{{0, 150, 150}, {4000, 150, 150}, 150}};
    const Solid cylinder = build(body_of(whole)).solid;
    CHECK(is_valid(cylinder));
    CHECK(volume(cylinder) == Approx(pi * 150 * 150 * 4000).epsilon(1e-9));
    Piece flat = log_of(4000, 220, 180);
    flat.cuts = {RoundCut{{0, 110, 90}, {4000, 110, 90}, 125}};
    const auto segment = [](double r, double d) { return r * r * std::acos(d / r) - d * std::sqrt(r * r - d * d); };
    const double area = pi * 125 * 125 - 2 * segment(125, 110) - 2 * segment(125, 90);
    CHECK(volume(build(body_of(flat)).solid) == Approx(area * 4000).epsilon(1e-9));
    CHECK(volume(build_plainly(flat)) == Approx(area * 4000).epsilon(1e-9));
}

TEST_CASE("Every log of a round house is one valid solid, the same cut by cut") {
    const Layout layout = lay_out(test::round_shell());
    INFO(test::words(layout.findings));
    REQUIRE_FALSE(layout.pieces.empty());
    check_solids(layout, 100, 2e-4);
    const Piece &log = layout.pieces[static_cast<std::size_t>(layout.models.back().pieces.front())];
    CHECK(volume(build_plainly(log)) == Approx(volume(build(body_of(log)).solid)).epsilon(1e-7));
}

TEST_CASE("Exact logs of a round house touch and do not overlap") {
    const Layout layout = lay_out(test::round_shell());
    const std::vector<BuiltSolid> solids = build_all(layout);
    int pairs = 0;
    for (std::size_t i = 0; i < layout.pieces.size() && pairs < 12; ++i)
        for (std::size_t j = i + 1; j < layout.pieces.size() && pairs < 12; ++j) {
            const Piece &a = layout.pieces[i], &b = layout.pieces[j];
            if (a.wall > 1 || b.wall > 1 || std::abs(a.frame.origin.z - b.frame.origin.z) > 250) continue;
            const TopoDS_Shape common = BRepAlgoAPI_Common(placed(solids[static_cast<std::size_t>(a.model)].solid.shape(), a.frame),
                                                           placed(solids[static_cast<std::size_t>(b.model)].solid.shape(), b.frame))
                                            .Shape();
            CHECK(volume(Solid(common)) < 1);
            ++pairs;
        }
    CHECK(pairs == 12);
}

TEST_CASE("Random waned and round logs are valid solids with the body's volume") {
    int built = 0;
    CHECK(rc::check([&] {
        if (built > 60) return; // booleans take their time
        const Layout layout = lay_out(*rc::gen::arbitrary<bool>() ? test::any_waned_shell() : test::any_saddle_shell());
        RC_PRE(!layout.pieces.empty());
        const std::vector<Body> bodies = bodies_of(layout);
        for (std::size_t m = 0; m < std::min(most_pieces, bodies.size()); ++m) {
            const Piece &piece = layout.pieces[static_cast<std::size_t>(layout.models[m].pieces.front())];
            const Solid solid = build(bodies[m]).solid;
            if (count_solids(solid) != 1 || !is_valid(solid)) RC_FAIL(piece.tag);
            const double exact = volume(solid);
            if (std::abs(exact / bodies[m].volume - 1) > 3e-4)
                RC_FAIL(piece.tag + " " + std::to_string(exact) + " " + std::to_string(bodies[m].volume));
            ++built;
        }
    }));
    CHECK(built > 20);
}
