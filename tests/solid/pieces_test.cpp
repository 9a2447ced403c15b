// Pieces of random shells, built both ways.
#include "kernel/boundary/boundary.h"
#include "kernel/boundary/measures.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/solid/build_all.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <ShapeUpgrade_UnifySameDomain.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Shape.hxx>
#include <rapidcheck.h>

#include <sstream>

using namespace roundlay;

namespace {

/// The slow ways take some 30 ms a piece, so that only so many of each shell go through them; all of them
/// when ROUNDLAY_THOROUGH is set (with RC_PARAMS=max_success=200, some minutes).
const std::size_t most_pieces = std::getenv("ROUNDLAY_THOROUGH") ? 100'000 : 6;

int faces_of(const Solid &solid) {
    int count = 0;
    for (TopExp_Explorer each(solid.shape(), TopAbs_FACE); each.More(); each.Next())
        ++count;
    return count;
}

/// Cut one after another, a groove that ends in an opening leaves the ceiling of both in two faces.
Solid united(const Solid &solid) {
    ShapeUpgrade_UnifySameDomain same(solid.shape());
    same.Build();
    return Solid(same.Shape());
}

bool near(double a, double b, double relative) {
    return std::abs(a - b) <= relative * std::abs(b);
}

Shell any_of_all() {
    const int kind = *rc::gen::inRange(0, 3);
    return kind == 0 ? test::any_shell() : kind == 1 ? test::any_family_shell() : test::any_fitted_shell();
}

Layout any_layout(test::ThrownAway &thrown) {
    Layout layout = lay_out(any_of_all());
    thrown.discard_refused(layout.findings);
    return layout;
}

const Piece &first_of(const Layout &layout, Index<Model> model) {
    return layout.pieces[layout.models[model].pieces.front()];
}

} // namespace

TEST_CASE("Every piece written down directly is valid, free of interference, one solid, and has the body's "
          "volume") {
    test::ThrownAway thrown(test::refusals());
    int built_count = 0;
    const bool passed = rc::check([&] {
        const Shell shell = any_of_all();
        const Layout layout = lay_out(shell);
        thrown.discard_refused(layout.findings);
        const Bodies bodies = bodies_of(layout);
        const BuiltSolids solids = build_all(bodies);
        for (const auto m : solids.indices()) {
            RC_ASSERT(solids[m].method == Method::direct);
            const Solid &solid = solids[m].solid;
            RC_ASSERT(count_solids(solid) == 1);
            if (!is_valid(solid))
                RC_FAIL(first_of(layout, m).tag + " is not valid\n" + write_document(shell));
            // Two sums of many signed parts: slanted faces of tapered logs round to 1.02e-12 apart at worst
            // seen.
            if (!near(volume(solid), bodies[m].volume, 1e-10)) {
                std::ostringstream told;
                told.precision(17);
                told << first_of(layout, m).tag << ": solid " << volume(solid) << " body " << bodies[m].volume
                     << "\n"
                     << write_document(shell);
                RC_FAIL(told.str());
            }
            if (m.at() < most_pieces) RC_ASSERT(is_free_of_self_interference(solid));
            ++built_count;
        }
    });
    CHECK(passed);
    CHECK(built_count > 10);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("Written down directly and cut one after another, a piece is the same") {
    test::ThrownAway thrown(test::refusals());
    int compared = 0;
    const bool passed = rc::check([&] {
        const Layout layout = any_layout(thrown);
        for (const auto m : Indices<Model>(std::min(layout.models.size(), most_pieces))) {
            const Piece &piece = first_of(layout, m);
            const Solid direct = build(body_of(piece)).solid, plain = build_plainly(piece);
            RC_ASSERT(count_solids(plain) == 1);
            RC_ASSERT(is_valid(plain));
            RC_ASSERT(near(volume(direct), volume(plain), 1e-9));
            RC_ASSERT(faces_of(direct) == faces_of(united(plain)));
            const Measures a = measures_of(direct), b = measures_of(plain);
            RC_ASSERT(near(a.area, b.area, 1e-9));
            RC_ASSERT(length(a.centroid - b.centroid) < 1e-6);
            ++compared;
        }
    });
    CHECK(passed);
    CHECK(compared > 5);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("The closed form of a border agrees with the library's integration") {
    test::ThrownAway thrown(test::refusals());
    const bool passed = rc::check([&] {
        const Layout layout = any_layout(thrown);
        const Body body = body_of(first_of(layout, Index<Model>(0)));
        const std::optional<Boundary> border = boundary_of(body);
        RC_ASSERT(border.has_value());
        const Measures closed = measures_of(*border), integrated = measures_of(build(body).solid);
        // Mostly to 1e-15; slanted faces of tapered logs were seen 1.0e-11 apart.
        RC_ASSERT(near(closed.volume, integrated.volume, 1e-10));
        RC_ASSERT(near(closed.volume, body.volume, 1e-10));
        RC_ASSERT(near(closed.area, integrated.area, 1e-10));
        RC_ASSERT(length(closed.centroid - integrated.centroid) < 1e-8);
        // The body takes its bores' middles on their axes: one in a slanting face is off, by 1.01e-4 mm at
        // worst seen.
        RC_ASSERT(length(closed.centroid - body.centroid) < 1e-3);
    });
    CHECK(passed);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("All models of a layout are built in their order, on any number of threads") {
    const Layout layout = lay_out(test::plain_shell());
    const BuiltSolids one = build_all(layout, 1), two = build_all(layout, 2), many = build_all(layout, 7);
    REQUIRE(one.size() == layout.models.size());
    REQUIRE(two.size() == one.size());
    REQUIRE(many.size() == one.size());
    for (const auto m : one.indices()) {
        CHECK(volume(one[m].solid) == Approx(body_of(first_of(layout, m)).volume).epsilon(1e-12));
        CHECK(volume(two[m].solid) == volume(one[m].solid));
        CHECK(volume(many[m].solid) == volume(one[m].solid));
    }
}

TEST_CASE("A model that cannot be built is named") {
    Layout layout = lay_out(test::plain_shell());
    const Piece &first = first_of(layout, Index<Model>(1));
    Piece &spoilt = layout.pieces[layout.models[Index<Model>(1)].pieces.front()];
    const double far = spoilt.blank.length + 1;
    spoilt.cuts.clear();
    spoilt.cuts.emplace_back(BoxCut{BoxUse::through, {{-1, -1, -1}, {far, far, far}}, "all of it"});
    CHECK_THROWS_WITH(build_all(layout, 2), "Piece " + first.tag + ": A piece with no wood has no solid.");
}
