#include "exporters/mesh/triangulate.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <map>
#include <numbers>

using namespace roundlay;

namespace {

struct Region {
    std::vector<Vec2> points;
    std::vector<int> sizes;

    void add(std::vector<Vec2> loop) {
        sizes.push_back(static_cast<int>(loop.size()));
        points.insert(points.end(), loop.begin(), loop.end());
    }
};

double area(const Region &region) {
    double twice = 0;
    std::size_t first = 0;
    for (const int size : region.sizes) {
        for (int i = 0; i < size; ++i)
            twice += cross(region.points[first + i], region.points[first + (i + 1) % size]);
        first += size;
    }
    return twice / 2;
}

/// Every loop side is used once as given, every inner side once each way; areas are positive and add up.
void check_fills(const Region &region) {
    const auto triangles = triangulated(region.points, region.sizes);
    const std::size_t holes = region.sizes.size() - 1;
    RC_ASSERT(triangles.size() == region.points.size() + 2 * holes - 2);
    std::map<std::pair<int, int>, int> uses;
    double sum = 0;
    for (const auto &[a, b, c] : triangles) {
        const double twice = cross(region.points[b] - region.points[a], region.points[c] - region.points[a]);
        RC_ASSERT(twice > 0);
        sum += twice / 2;
        for (const auto &[from, to] : {std::pair{a, b}, std::pair{b, c}, std::pair{c, a}}) {
            uses[{from, to}] += 1;
            uses[{to, from}] -= 1;
        }
    }
    int first = 0;
    for (const int size : region.sizes) {
        for (int i = 0; i < size; ++i) {
            uses[{first + i, first + (i + 1) % size}] -= 1;
            uses[{first + (i + 1) % size, first + i}] += 1;
        }
        first += size;
    }
    for (const auto &[side, count] : uses)
        RC_ASSERT(count == 0);
    RC_ASSERT(std::abs(sum - area(region)) <= 1e-9 * area(region));
}

/// A region made of the cells of a small grid, so that equal coordinates and straight runs abound.
/// Its border is walked cell side by cell side; corners where only two diagonal cells meet are avoided by
/// filling them.
Region of_grid(std::vector<std::vector<bool>> filled) {
    const int n = static_cast<int>(filled.size());
    const auto at = [&](int x, int y) { return x >= 0 && y >= 0 && x < n && y < n && filled[x][y]; };
    for (bool changed = true; changed;) {
        changed = false;
        for (int x = 1; x < n; ++x)
            for (int y = 1; y < n; ++y) {
                const bool a = at(x - 1, y - 1), b = at(x, y - 1), c = at(x - 1, y), d = at(x, y);
                if ((a && d && !b && !c) || (b && c && !a && !d)) {
                    filled[x - 1][y - 1] = filled[x][y] = filled[x][y - 1] = true;
                    changed = true;
                }
            }
    }
    std::map<std::pair<int, int>, std::pair<int, int>> next;
    for (int x = 0; x < n; ++x)
        for (int y = 0; y < n; ++y) {
            if (!at(x, y)) continue;
            if (!at(x, y - 1)) next[{x, y}] = {x + 1, y};
            if (!at(x + 1, y)) next[{x + 1, y}] = {x + 1, y + 1};
            if (!at(x, y + 1)) next[{x + 1, y + 1}] = {x, y + 1};
            if (!at(x - 1, y)) next[{x, y + 1}] = {x, y};
        }
    Region region;
    while (!next.empty()) {
        std::vector<Vec2> loop;
        for (auto here = next.begin()->first; next.count(here);) {
            loop.push_back({static_cast<double>(here.first), static_cast<double>(here.second)});
            const auto there = next[here];
            next.erase(here);
            here = there;
        }
        region.add(loop);
    }
    return region;
}

Region star(int corners, const std::vector<int> &radii, double tilt) {
    std::vector<Vec2> loop;
    for (int i = 0; i < corners; ++i) {
        const double angle = tilt + 2 * std::numbers::pi * i / corners;
        loop.push_back({radii[i] * std::cos(angle), radii[i] * std::sin(angle)});
    }
    Region region;
    region.add(loop);
    return region;
}

} // namespace

TEST_CASE("Regions with many reflex corners are filled exactly") {
    CHECK(rc::check([] {
        const int corners = *rc::gen::inRange(3, 60);
        const auto radii = *rc::gen::container<std::vector<int>>(corners, rc::gen::inRange(20, 100));
        Region region = star(corners, radii, *rc::gen::inRange(0, 100) / 37.0);
        if (*rc::gen::arbitrary<bool>()) {
            const double reach = 19 * std::cos(std::numbers::pi / std::max(corners, 3));
            Region hole = star(5, {5, 9, 4, 8, 7}, 1.0);
            if (reach > 9) region.add({hole.points.rbegin(), hole.points.rend()});
        }
        check_fills(region);
    }));
}

TEST_CASE("Regions of squares, with straight runs of corners and holes, are filled exactly") {
    CHECK(rc::check([] {
        const int n = *rc::gen::inRange(1, 9);
        std::vector<std::vector<bool>> filled(n, std::vector<bool>(n));
        for (auto &column : filled)
            for (std::size_t y = 0; y < column.size(); ++y)
                column[y] = *rc::gen::inRange(0, 4) != 0;
        filled[0][0] = true;
        const Region all = of_grid(filled);
        // Several separate regions are filled at once: count loops that run counter-clockwise.
        const auto triangles = triangulated(all.points, all.sizes);
        double sum = 0;
        for (const auto &[a, b, c] : triangles) {
            const double twice = cross(all.points[b] - all.points[a], all.points[c] - all.points[a]);
            RC_ASSERT(twice > 0);
            sum += twice / 2;
        }
        RC_ASSERT(sum == area(all)); // whole numbers: exact
    }));
}

TEST_CASE("A square with a hole turned the wrong way is refused or not filled as if it were right") {
    Region region;
    region.add({{0, 0}, {10, 0}, {10, 10}, {0, 10}});
    region.add({{4, 4}, {6, 4}, {6, 6}, {4, 6}});
    bool refused = false;
    std::size_t count = 0;
    try {
        count = triangulated(region.points, region.sizes).size();
    } catch (const std::logic_error &) {
        refused = true;
    }
    CHECK((refused || count != 8));
}
