#include "kernel/geometry/cell.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

using namespace roundlay;

namespace {

Cell unit_cube() {
    return box_cell({{0, 0, 0}, {1, 1, 1}});
}

Plane random_plane() {
    const auto part = [] { return *rc::gen::inRange(-1000, 1001) / 1000.0; };
    Vec3 n{part(), part(), part()};
    if (length(n) < 0.01) n = {0, 0, 1};
    n = unit(n);
    return {n, dot(n, Vec3{part() * 500, part() * 100, part() * 100})};
}

} // namespace

TEST_CASE("A box has its volume and centroid") {
    const Cell box = box_cell({{10, 20, 30}, {13, 25, 37}});
    CHECK(volume(box) == Approx(105).epsilon(1e-14));
    const Vec3 c = centroid(box);
    CHECK(c.x == Approx(11.5));
    CHECK(c.y == Approx(22.5));
    CHECK(c.z == Approx(33.5));
}

TEST_CASE("Cutting a cube's corner off takes a sixth of the cube on its edges") {
    const Plane through_three_corners{unit({1, 1, 1}), 1 / std::sqrt(3.0)};
    CHECK(volume(clipped(unit_cube(), through_three_corners)) == Approx(1.0 / 6).epsilon(1e-14));
    const SplitCell halves = split(unit_cube(), through_three_corners);
    CHECK(volume(halves.inside) + volume(halves.outside) == Approx(1).epsilon(1e-14));
}

TEST_CASE("A plane along a face leaves the cell whole or empty") {
    CHECK(clipped(unit_cube(), {{0, 0, 1}, 1}).faces.size() == 6);
    CHECK(clipped(unit_cube(), {{0, 0, 1}, 0}).empty());
    CHECK(clipped(unit_cube(), {{0, 0, -1}, -1}).empty());
}

TEST_CASE("Common volume of shifted cubes, and none where they only touch") {
    const Cell other = box_cell({{0.25, 0.5, 0.75}, {2, 2, 2}});
    CHECK(common_volume(unit_cube(), other) == Approx(0.75 * 0.5 * 0.25).epsilon(1e-14));
    CHECK(common_volume(unit_cube(), box_cell({{1, 0, 0}, {2, 1, 1}})) == 0);
}

TEST_CASE("Both sides of random cuts add up to the whole") {
    CHECK(rc::check([] {
        Cell cell = box_cell({{-500, -100, -100}, {500, 100, 100}});
        for (int i = 0; i < 6; ++i) {
            const double before = volume(cell);
            const SplitCell parts = split(cell, random_plane());
            RC_ASSERT(std::abs(volume(parts.inside) + volume(parts.outside) - before) < 1e-3);
            cell = volume(parts.inside) > volume(parts.outside) ? parts.inside : parts.outside;
        }
    }));
}
