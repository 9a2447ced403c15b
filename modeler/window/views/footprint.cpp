#include "modeler/window/views/footprint.h"

#include <algorithm>

namespace roundlay::window {

namespace {

/// The hull of the points, counter-clockwise.
std::vector<Vec2> hull_of(std::vector<Vec2> points) {
    std::ranges::sort(points, [](Vec2 a, Vec2 b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    std::vector<Vec2> hull;
    const auto go_round = [&](auto begin, auto end) {
        const std::size_t first = hull.size();
        for (auto p = begin; p != end; ++p) {
            while (hull.size() > first + 1 &&
                   cross(hull.back() - hull[hull.size() - 2], *p - hull.back()) <= 0)
                hull.pop_back();
            hull.push_back(*p);
        }
        hull.pop_back(); // the other half begins with it
    };
    if (points.size() < 3) return {};
    go_round(points.begin(), points.end());
    go_round(points.rbegin(), points.rend());
    return hull;
}

} // namespace

Indexed<std::vector<Vec2>, WallPlace> footprints(const State &state) {
    const Layout &layout = state.drawn();
    Indexed<std::vector<Vec2>, WallPlace> points(layout.walls.size());
    if (state.job.bodies.empty()) return points;
    for (const Piece &piece : layout.pieces) {
        if (piece.timber) continue;
        for (const Vec3 v : state.job.bodies[piece.model].hewn.vertices) {
            const Vec3 at = piece.frame.to_world(v);
            points[piece.wall].push_back({at.x, at.y});
        }
    }
    for (auto &wall : points)
        wall = hull_of(std::move(wall));
    return points;
}

} // namespace roundlay::window
