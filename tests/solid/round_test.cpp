// Exact solids of round logs: wane, grooves and saddles.
#include "kernel/boundary/boundary.h"
#include "kernel/boundary/measures.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/shapes.h"
#include "kernel/solid/build_all.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/saddle.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Trsf.hxx>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>

using namespace roundlay;

namespace {

constexpr double pi = std::numbers::pi;
const int most_compared = std::getenv("ROUNDLAY_THOROUGH") ? 100'000 : 30;
const std::size_t most_pieces = std::getenv("ROUNDLAY_THOROUGH") ? 100'000 : 4;

Piece log_of(double length, double width, double height) {
    Piece p;
    p.blank = {length, width, height};
    p.far.shoulder = length;
    return p;
}

Shell any_round_logs() {
    return *rc::gen::arbitrary<bool>() ? test::any_waned_shell() : test::any_saddle_shell();
}

void check_solids(const Layout &layout, std::size_t most, double near) {
    const Bodies bodies = bodies_of(layout);
    for (const auto m : Indices<Model>(std::min(most, bodies.size()))) {
        INFO(layout.pieces[layout.models[m].pieces.front()].tag);
        const Solid solid = build(bodies[m]).solid;
        CHECK(count_solids(solid) == 1);
        CHECK(is_valid(solid));
        CHECK(volume(solid) == Approx(bodies[m].volume).epsilon(near));
        CHECK(length(measures_of(solid).centroid - bodies[m].centroid) < 1);
    }
}

TopoDS_Shape placed(const TopoDS_Shape &shape, const Frame &f) {
    gp_Trsf move;
    move.SetValues(f.x.x, f.y.x, f.z.x, f.origin.x, f.x.y, f.y.y, f.z.y, f.origin.y, f.x.z, f.y.z, f.z.z,
                   f.origin.z);
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
    const auto segment = [](double r, double d) {
        return r * r * std::acos(d / r) - d * std::sqrt(r * r - d * d);
    };
    const double area = pi * 125 * 125 - 2 * segment(125, 110) - 2 * segment(125, 90);
    CHECK(volume(build(body_of(flat)).solid) == Approx(area * 4000).epsilon(1e-9));
    CHECK(volume(build_plainly(flat)) == Approx(area * 4000).epsilon(1e-9));
}

// Two cylinders whose axes cross squarely, radii R > r, k = r / R, share 8/3 R ((R^2 + r^2) E(k) - (R^2 -
// r^2) K(k)): the formula, from memory, is held against the plain sum of sections beside it.
TEST_CASE("A saddle over half a round log takes half of what two crossing cylinders share") {
    const double big = 150, small = 100, k = small / big;
    const double shared = 8.0 / 3 * big *
                          ((big * big + small * small) * std::comp_ellint_2(k) -
                           (big * big - small * small) * std::comp_ellint_1(k));
    double sum = 0;
    constexpr int sections = 200'000;
    for (int i = 0; i < sections; ++i) {
        const double z = small * ((2.0 * i + 1) / sections - 1);
        sum += 4 * std::sqrt(big * big - z * z) * std::sqrt(small * small - z * z) * 2 * small / sections;
    }
    REQUIRE(shared == Approx(sum).epsilon(1e-7));
    Piece log = log_of(2000, 300, 150);
    ScopeCut saddle;
    saddle.at = {1000, 0, 0};
    saddle.along = {0, 1, 0};
    saddle.radius = small;
    log.cuts = {RoundCut{{0, 150, 0}, {2000, 150, 0}, big}, saddle};
    const double wood = pi * big * big / 2 * 2000 - shared / 2;
    const Body body = body_of(log);
    const BuiltSolid built = build(body);
    CHECK(built.method == Method::direct);
    CHECK(is_valid(built.solid));
    CHECK(measures_of(*boundary_of(body)).volume == Approx(wood).epsilon(1e-9));
    CHECK(volume(built.solid) == Approx(wood).epsilon(1e-9));
    CHECK(volume(build_plainly(log)) == Approx(wood).epsilon(1e-7));
    CHECK(body.volume == Approx(wood).epsilon(2e-4));
}

TEST_CASE("A saddle over a log that is hewn flat is exact: cheeks, and the round between them") {
    Piece log = log_of(2000, 300, 300);
    ScopeCut saddle = test::saddle_over_middle();
    for (const double half : {149.0, 120.0, 75.0}) {
        saddle.cheeks = half;
        log.cuts = {saddle};
        const double wood = 2000.0 * 300 * 300 - 300 * test::saddle_section(half);
        const Body body = body_of(log);
        const BuiltSolid built = build(body);
        CHECK(built.method == Method::direct);
        CHECK(is_valid(built.solid));
        CHECK(volume(built.solid) == Approx(wood).epsilon(1e-9));
        CHECK(volume(build_plainly(log)) == Approx(wood).epsilon(1e-7));
        CHECK(body.volume == Approx(wood).epsilon(2e-4));
    }
}

TEST_CASE("Every log of a round house is one valid solid, the same cut by cut") {
    const Layout layout = lay_out(test::round_shell());
    INFO(test::words(layout.findings));
    REQUIRE_FALSE(layout.pieces.empty());
    check_solids(layout, 100, 2e-4);
    const Piece &log = layout.pieces[layout.models.back().pieces.front()];
    const BuiltSolid built = build(body_of(log));
    CHECK(built.method == Method::direct);
    CHECK(volume(build_plainly(log)) == Approx(volume(built.solid)).epsilon(1e-7));
}

TEST_CASE(
    "A sill that lies exactly in the arris of a hewn round log makes one face of it, not two that touch") {
    Shell shell = test::round_shell();
    shell.thickness = Length::mm(285);
    shell.logs.diameter = Length::mm(293); // hewn at 142.5 of 146.5: the arris lies 34 over the axis
    shell.rounds.pitch = Length::mm(265.05);
    shell.rounds.count = 7;
    shell.rounds.full_first = "B";
    shell.walls = rectangle_plan(Length::mm(6000), Length::mm(6000));
    shell.openings = {test::window("C", 720, 0, 300, 100), test::window("C", 3000, 34, 300, 100)};
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    const auto log = std::ranges::find(layout.pieces, "C-01-1", &Piece::tag);
    REQUIRE(log != layout.pieces.end());
    const Body body = body_of(*log);
    const BuiltSolid built = build(body);
    CHECK(is_valid(built.solid));
    CHECK(count_solids(built.solid) == 1);
    CHECK(volume(built.solid) == Approx(body.volume).epsilon(3e-4));
}

TEST_CASE("Exact logs of a round house touch and do not overlap") {
    const Layout layout = lay_out(test::round_shell());
    const BuiltSolids solids = build_all(layout);
    int pairs = 0;
    for (const auto i : layout.pieces.indices())
        for (const auto j : layout.pieces.after(i)) {
            const Piece &a = layout.pieces[i], &b = layout.pieces[j];
            if (pairs == 12 || a.wall.at() > 1 || b.wall.at() > 1 ||
                std::abs(a.frame.origin.z - b.frame.origin.z) > 250)
                continue;
            const TopoDS_Shape common = BRepAlgoAPI_Common(placed(solids[a.model].solid.shape(), a.frame),
                                                           placed(solids[b.model].solid.shape(), b.frame))
                                            .Shape();
            CHECK(volume(Solid(common)) < 1);
            ++pairs;
        }
    CHECK(pairs == 12);
}

TEST_CASE("Random waned and round logs are valid solids with the body's volume") {
    test::ThrownAway thrown(test::refusals());
    int direct = 0, boolean = 0;
    CHECK(rc::check([&] {
        const Shell shell = any_round_logs();
        const Layout layout = lay_out(shell);
        thrown.discard_refused(layout.findings);
        const Bodies bodies = bodies_of(layout);
        for (const auto m : bodies.indices()) {
            const Piece &piece = layout.pieces[layout.models[m].pieces.front()];
            const std::optional<Boundary> border = boundary_of(bodies[m]);
            ++(border ? direct : boolean);
            if (!border && m.at() >= most_pieces) continue; // booleans take their time
            const BuiltSolid built = build(bodies[m]);
            RC_ASSERT((built.method == Method::direct) == border.has_value());
            const Solid &solid = built.solid;
            if (count_solids(solid) != 1 || !is_valid(solid))
                RC_FAIL(piece.tag + "\n" + write_document(shell));
            const double exact = volume(solid);
            if (std::abs(exact / bodies[m].volume - 1) > 3e-4)
                RC_FAIL(piece.tag + " " + std::to_string(exact) + " " + std::to_string(bodies[m].volume) +
                        "\n" + write_document(shell));
            if (!border) continue;
            const Measures closed = measures_of(*border), integrated = measures_of(solid);
            RC_ASSERT(closed.volume == Approx(integrated.volume).epsilon(1e-8));
            RC_ASSERT(closed.area == Approx(integrated.area).epsilon(1e-8));
            RC_ASSERT(length(closed.centroid - integrated.centroid) < 1e-4);
        }
    }));
    WARN(direct << " pieces written down, " << boolean << " by a boolean");
    CHECK(direct > 100);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

// The same hundred shells each time: from ten random ones the share tells little, since pieces of one shell
// go alike.
TEST_CASE("Of waned and round logs few take a boolean") {
    test::ThrownAway thrown(test::refusals());
    int direct = 0, boolean = 0;
    rc::detail::TestParams params;
    params.seed = 1;
    params.maxSuccess = 100;
    const auto count = [&] {
        const Layout layout = lay_out(any_round_logs());
        thrown.discard_refused(layout.findings);
        for (const Body &body : bodies_of(layout))
            ++(boundary_of(body) ? direct : boolean);
    };
    CHECK(
        rc::detail::checkTestable(count, rc::detail::TestMetadata{}, params).is<rc::detail::SuccessResult>());
    WARN(direct << " pieces written down, " << boolean << " by a boolean");
    CHECK(direct > 20 * boolean);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("Round logs written down directly are the same as cut one after another") {
    test::ThrownAway thrown(test::refusals());
    int compared = 0;
    CHECK(rc::check([&] {
        if (compared >= most_compared) return; // a plain way takes half a second
        const Layout layout = lay_out(any_round_logs());
        thrown.discard_refused(layout.findings);
        const Index<Model> m(*rc::gen::inRange<std::size_t>(0, layout.models.size()));
        const Piece &piece = layout.pieces[layout.models[m].pieces.front()];
        const Body body = body_of(piece);
        if (body.rounds.empty() || !boundary_of(body)) return;
        const Solid direct = build(body).solid, plain = build_plainly(piece);
        RC_ASSERT(count_solids(plain) == 1);
        RC_ASSERT(is_free_of_self_interference(direct));
        const Measures a = measures_of(direct), b = measures_of(plain);
        if (std::abs(a.volume / b.volume - 1) > 1e-6 || std::abs(a.area / b.area - 1) > 1e-5 ||
            length(a.centroid - b.centroid) > 1e-2)
            RC_FAIL(piece.tag + " " + std::to_string(a.volume) + " " + std::to_string(b.volume));
        ++compared;
    }));
    CHECK(compared >= 3);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}
