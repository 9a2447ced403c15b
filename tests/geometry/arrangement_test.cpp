// Polygons of wood before and behind a plane, added up: asked point by point, with no use of edges or
// crossings.
#include "kernel/geometry/plane_arrangement.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using namespace roundlay;

namespace {

/// Counter-clockwise; of points in a line the two outermost and back again.
std::vector<int> hull_of(const std::vector<Vec2> &points, std::vector<int> chosen) {
    const auto at = [&](int i) { return points[static_cast<std::size_t>(i)]; };
    const auto before = [&](int a, int b) {
        return std::pair(at(a).x, at(a).y) < std::pair(at(b).x, at(b).y);
    };
    std::sort(chosen.begin(), chosen.end(), before);
    std::vector<int> ring;
    for (int side = 0; side < 2; ++side) {
        const std::size_t first = ring.size();
        for (const int i : chosen) {
            while (ring.size() >= first + 2 &&
                   cross(at(ring.back()) - at(ring[ring.size() - 2]), at(i) - at(ring.back())) <= 0)
                ring.pop_back();
            ring.push_back(i);
        }
        ring.pop_back();
        std::reverse(chosen.begin(), chosen.end());
    }
    return ring;
}

/// Even and odd crossings of a ray to the right; the point lies on no edge's end height.
bool encloses(const std::vector<Vec2> &points, const std::vector<int> &ring, Vec2 p) {
    int crossings = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        Vec2 a = points[static_cast<std::size_t>(ring[i])],
             b = points[static_cast<std::size_t>(ring[(i + 1) % ring.size()])];
        if (a.y > b.y) std::swap(a, b);
        if (p.y < a.y || p.y >= b.y) continue;
        crossings += cross(b - a, p - a) > 0;
    }
    return crossings % 2 == 1;
}

int border_at(const std::vector<Vec2> &points, const std::vector<BorderRegion> &regions, Vec2 p) {
    int found = 0;
    for (const BorderRegion &region : regions) {
        const bool in = encloses(points, region.loops[0], p);
        const bool in_hole = std::any_of(region.loops.begin() + 1, region.loops.end(),
                                         [&](const auto &hole) { return encloses(points, hole, p); });
        if (in && !in_hole) found += region.sign;
    }
    return found;
}

double area_of(const std::vector<Vec2> &points, const std::vector<int> &ring) {
    double doubled = 0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        doubled += cross(points[static_cast<std::size_t>(ring[i])],
                         points[static_cast<std::size_t>(ring[(i + 1) % ring.size()])]);
    return doubled / 2;
}

/// On a coarse grid, turned so that no edge lies along an axis: corners and edges of several fall together.
std::vector<Vec2> grid_points(int side) {
    std::vector<Vec2> points;
    for (int x = 0; x < side; ++x)
        for (int y = 0; y < side; ++y)
            points.push_back({10 * (0.8 * x - 0.6 * y), 10 * (0.6 * x + 0.8 * y)});
    return points;
}

std::vector<SignedPolygon> any_polygons(int points) {
    std::vector<SignedPolygon> polygons;
    const int count = *rc::gen::inRange(2, 7);
    while (static_cast<int>(polygons.size()) < count) {
        const auto chosen = *rc::gen::container<std::vector<int>>(5, rc::gen::inRange(0, points));
        polygons.push_back({{}, *rc::gen::element(1, -1)});
        polygons.back().ring = chosen;
    }
    return polygons;
}

void unique_only(std::vector<int> &chosen) {
    std::sort(chosen.begin(), chosen.end());
    chosen.erase(std::unique(chosen.begin(), chosen.end()), chosen.end());
}

} // namespace

TEST_CASE("Polygons in a plane add up to the border that each point of it has") {
    CHECK(rc::check("the sign at a point is that of the sum over the polygons round it", [] {
        constexpr int side = 5;
        std::vector<Vec2> points = grid_points(side);
        std::vector<SignedPolygon> polygons = any_polygons(side * side);
        for (SignedPolygon &polygon : polygons) {
            unique_only(polygon.ring);
            RC_PRE(polygon.ring.size() >= 2);
            polygon.ring = hull_of(points, polygon.ring);
        }
        const std::vector<Vec2> before = points;
        const std::vector<BorderRegion> regions = add_up(points, polygons);
        for (const BorderRegion &region : regions)
            for (std::size_t i = 0; i < region.loops.size(); ++i) {
                const double area =
                    area_of(points, region.loops[i]); // none: a ring without area that nothing else meets
                RC_ASSERT(std::abs(area) < 1e-9 || (area > 0) == (i == 0));
            }
        for (int k = 0; k < 200; ++k) { // fixed places off every edge and corner
            const Vec2 p{-31.7 + 0.3931 * k, std::fmod(7.13 + 3.7717 * k, 68.0)};
            int sum = 0;
            for (const SignedPolygon &polygon : polygons)
                sum += encloses(before, polygon.ring, p) ? polygon.sign : 0;
            RC_ASSERT(border_at(points, regions, p) == (sum > 0) - (sum < 0));
        }
    }));
}

TEST_CASE("A frame of four boards leaves a hole, and a board in it a region of its own") {
    std::vector<Vec2> points;
    const auto turned = [](double x, double y) { return Vec2{0.8 * x - 0.6 * y, 0.6 * x + 0.8 * y}; };
    const auto board = [&](double x0, double y0, double x1, double y1, int sign) {
        SignedPolygon made{{}, sign};
        for (const Vec2 p : {turned(x0, y0), turned(x1, y0), turned(x1, y1), turned(x0, y1)}) {
            const auto known =
                std::find_if(points.begin(), points.end(), [&](Vec2 q) { return length(q - p) < 1e-9; });
            made.ring.push_back(static_cast<int>(known - points.begin()));
            if (known == points.end()) points.push_back(p);
        }
        return made;
    };
    const std::vector<SignedPolygon> boards{board(0, 0, 9, 1, 1), board(0, 8, 9, 9, 1), board(0, 1, 1, 8, 1),
                                            board(8, 1, 9, 8, 1), board(3, 3, 6, 6, 1)};
    std::vector<BorderRegion> regions = add_up(points, boards);
    REQUIRE(regions.size() == 2);
    std::sort(regions.begin(), regions.end(),
              [](const auto &a, const auto &b) { return a.loops.size() < b.loops.size(); });
    REQUIRE(regions[0].loops.size() == 1);
    REQUIRE(regions[1].loops.size() == 2);
    CHECK(area_of(points, regions[0].loops[0]) == Approx(9));
    CHECK(area_of(points, regions[1].loops[0]) == Approx(81));
    CHECK(area_of(points, regions[1].loops[1]) == Approx(-49));
}
