#include "kernel/geometry/cell.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <numeric>

using namespace roundlay;

namespace {

double total(const std::vector<Cell> &cells) {
    return std::accumulate(cells.begin(), cells.end(), 0.0,
                           [](double v, const Cell &c) { return v + volume(c); });
}

std::vector<Plane> box_region(const Box3 &b) {
    return {{{-1, 0, 0}, -b.low.x}, {{1, 0, 0}, b.high.x},  {{0, -1, 0}, -b.low.y},
            {{0, 1, 0}, b.high.y},  {{0, 0, -1}, -b.low.z}, {{0, 0, 1}, b.high.z}};
}

/// Euler's formula for a solid of `genus` handles whose faces may have holes.
int euler(const Polyhedron &p) {
    int edges = 0, holes = 0;
    for (const Face &f : p.faces) {
        for (const auto &loop : f.loops)
            edges += static_cast<int>(loop.size());
        holes += static_cast<int>(f.loops.size()) - 1;
    }
    return static_cast<int>(p.vertices.size()) - edges / 2 + static_cast<int>(p.faces.size()) - holes;
}

} // namespace

TEST_CASE("A box in two halves has the border of the whole box") {
    const Cell box = box_cell({{0, 0, 0}, {4, 2, 1}});
    const SplitCell halves = split(box, {unit({1, 0.3, 0.2}), 2});
    const Polyhedron p = border_of({halves.inside, halves.outside});
    CHECK(p.vertices.size() == 8);
    CHECK(p.faces.size() == 6);
    CHECK(is_closed(p));
    CHECK(volume(p) == Approx(8).epsilon(1e-13));
}

TEST_CASE("A window through a box leaves two faces with a hole each") {
    const auto cells = without({box_cell({{0, 0, 0}, {10, 2, 8}})}, box_region({{3, -1, 2}, {6, 3, 5}}));
    const Polyhedron p = border_of(cells);
    CHECK(volume(p) == Approx(160 - 18).epsilon(1e-13));
    CHECK(is_closed(p));
    int with_hole = 0;
    for (const Face &f : p.faces)
        with_hole += f.loops.size() == 2;
    CHECK(with_hole == 2);
    CHECK(p.faces.size() == 10);
    CHECK(p.vertices.size() == 16);
    CHECK(euler(p) == 0); // one handle
}

TEST_CASE("A notch from the top leaves a U of ten faces") {
    const auto cells = without({box_cell({{0, 0, 0}, {10, 2, 8}})}, box_region({{3, -1, 2}, {6, 3, 99}}));
    const Polyhedron p = border_of(cells);
    CHECK(p.faces.size() == 10);
    CHECK(p.vertices.size() == 16);
    CHECK(is_closed(p));
    CHECK(euler(p) == 2);
}

TEST_CASE("Random boxes taken out leave a closed border of the same volume") {
    CHECK(rc::check([] {
        std::vector<Cell> cells{box_cell({{0, 0, 0}, {5000, 200, 220}})};
        const int cuts = *rc::gen::inRange(1, 5);
        for (int i = 0; i < cuts; ++i) {
            // Feature sizes well over the weld; each cut on its own grid offset so that faces do not graze.
            const double x = *rc::gen::inRange(0, 4000) + 0.1 * i, z = *rc::gen::inRange(0, 200) + 0.1 * i;
            const double y = *rc::gen::inRange(-50, 150) + 0.1 * i;
            const Vec3 size{*rc::gen::inRange(20, 1500) + 0.01, *rc::gen::inRange(20, 300) + 0.01,
                            *rc::gen::inRange(20, 150) + 0.01};
            cells = without(std::move(cells), box_region({{x, y, z}, Vec3{x, y, z} + size}));
        }
        const Polyhedron p = border_of(cells);
        RC_ASSERT(std::abs(volume(p) - total(cells)) < 1e-4);
        RC_ASSERT(is_closed(p));
    }));
}

TEST_CASE("Where a wedge stands on the edge of a box, the box's side has the wedge's corners too") {
    // Its front leans back from the box's: only its foot, 1 long, lies in the box's edge, 4 long.
    const Plane front{unit({0, -1, 0.5}), 0.5 / std::sqrt(1.25)}; // y = (z - 1) / 2
    const Cell wedge = clipped(box_cell({{1, 0, 1}, {2, 1, 2}}), front);
    const Polyhedron p = border_of({box_cell({{0, 0, 0}, {4, 4, 1}}), wedge});
    CHECK(is_closed(p));
    CHECK(volume(p) == Approx(16 + 1 - 0.25).epsilon(1e-13));
    CHECK(p.faces.size() == 11);
    CHECK(p.vertices.size() == 16);
    CHECK(euler(p) == 2);
}
