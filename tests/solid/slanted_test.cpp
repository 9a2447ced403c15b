// Bores that open in slanted faces, as in tapered logs: their rims are ellipses.
#include "kernel/boundary/boundary.h"
#include "kernel/boundary/measures.h"
#include "kernel/boundary/rim.h"
#include "kernel/solid/solid.h"
#include "kernel/solid/wave.h"
#include "tests/solid/hand_made.h"
#include "tests/support/catch.h"

#include <cmath>
#include <numbers>

using namespace roundlay;
using namespace roundlay::hand_made;

namespace {

struct Slant {
    double along, across;
};

/// Up and down, along and across, as steep as a tail's plane ever is.
constexpr Slant slants[] = {{0.02, 0},    {-0.02, 0},   {0, 0.05}, {0, -0.05},
                            {0.01, 0.03}, {-0.1, 0.07}, {1e-7, 0}};

/// A through bore and two blind ones, one of them from above.
Body bored(Slant slant, bool clear) {
    const double length = 2000, width = 200, height = 300;
    const auto top = [&](double x, double y) { return height + slant.along * x + slant.across * y; };
    return body(slanted(length, width, height, slant.along, slant.across),
                {through_bore(500, 100, top(500, 100), 32), bore_from_top(900, 90, top(900, 90), 80, 38),
                 bore_from_under(1300, 110, 70, 25)},
                clear);
}

Vec3 on(const Rim &rim, double t) {
    const Vec3 minor = cross(rim.normal, rim.major);
    return rim.centre + rim.semi_major * std::cos(t) * rim.major + rim.semi_minor * std::sin(t) * minor;
}

} // namespace

TEST_CASE("Bores in slanted faces are written down directly and are right") {
    for (const Slant &slant : slants) {
        INFO(slant.along << " along, " << slant.across << " across");
        const Body wood = bored(slant, true);
        const BuiltSolid built = build(wood);
        CHECK(built.method == Method::direct);
        CHECK(is_valid(built.solid));
        CHECK(is_free_of_self_interference(built.solid));
        CHECK(count_solids(built.solid) == 1);
        // The mean length of a bore is its length on the axis: the closed form holds for any slant.
        CHECK(volume(built.solid) == Approx(wood.volume).epsilon(1e-12));
    }
}

TEST_CASE("In slanted faces too the direct way, one boolean and the closed form agree") {
    for (const Slant &slant : slants) {
        INFO(slant.along << " along, " << slant.across << " across");
        const BuiltSolid direct = build(bored(slant, true)), other = build(bored(slant, false));
        CHECK(other.method == Method::boolean);
        CHECK(is_valid(other.solid));
        const Measures closed = measures_of(*boundary_of(bored(slant, true)));
        for (const Measures &m : {measures_of(direct.solid), measures_of(other.solid)}) {
            CHECK(m.volume == Approx(closed.volume).epsilon(1e-9));
            CHECK(m.area == Approx(closed.area).epsilon(1e-9));
            CHECK(length(m.centroid - closed.centroid) < 1e-6);
        }
    }
}

TEST_CASE("A bore through a tail's planes is right by either way") {
    const double width = 200, height = 220;
    Body wood =
        body(two_tails(4000, width, height, 200, 0.125), {{100, 100, 42.5, 177.5, 32, {}, true, true}});
    for (const bool clear : {true, false}) {
        wood.bores_clear = clear;
        const BuiltSolid built = build(wood);
        CHECK((built.method == Method::direct) == clear);
        CHECK(is_valid(built.solid));
        CHECK(volume(built.solid) == Approx(wood.volume).epsilon(1e-9));
    }
}

TEST_CASE("A rim lies on its cylinder and in its plane, and starts at angle 0") {
    for (const Slant &slant : slants) {
        const BoundaryBore bore{{500, 100}, 16, {0, {}, true}, {300, {slant.along, slant.across}, true}};
        const Rim rim = rim_of(bore, true);
        for (int i = 0; i < 12; ++i) {
            const Vec3 p = on(rim, i * std::numbers::pi / 6);
            const Vec2 arm{p.x - 500, p.y - 100};
            CHECK(length(arm) == Approx(16).epsilon(1e-14));
            CHECK(p.z == Approx(300 + slant.along * arm.x + slant.across * arm.y).epsilon(1e-14));
        }
        const Vec3 first = on(rim, rim.start);
        CHECK(first.x == Approx(516).epsilon(1e-14));
        CHECK(first.y == Approx(100).epsilon(1e-14));
    }
}

TEST_CASE("A rim unrolled follows the rim in space") {
    // To 1e-9 mm, a hundredth of the tolerance that edges have at least.
    for (const Slant &slant : slants) {
        const BoundaryBore bore{{500, 100}, 16, {0, {}, true}, {300, {slant.along, slant.across}, true}};
        const Rim rim = rim_of(bore, true);
        const Handle(Geom2d_BSplineCurve) wave = wave_of(bore.above, bore.radius, bore.below.z, rim.start);
        for (int i = 0; i <= 200; ++i) {
            const double t = rim.start + 2 * std::numbers::pi * i / 200;
            const gp_Pnt2d uv = wave->Value(t);
            const Vec3 on_wall{500 + 16 * std::cos(uv.X()), 100 + 16 * std::sin(uv.X()), uv.Y()};
            CHECK(length(on(rim, t) - on_wall) < 1e-9);
        }
    }
}
