#include "kernel/layout/floors/side_reach.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

struct Met {
    Index<WallPlace> wall;
    double distance = 0;
};

/// Where a line from `start` first meets a face of a wall, at whatever angle that one stands.
std::optional<Met> first_met(const Plan &house, Vec2 start, Vec2 toward) {
    std::optional<Met> best;
    for (const auto w : house.walls.indices()) {
        const WallPlace &wall = house.walls[w];
        const double along = dot(flat(wall.frame.x), toward), across = dot(flat(wall.frame.y), toward);
        if (std::abs(across) < parallel) continue;
        const Vec3 local = wall.frame.to_local({start.x, start.y, 0});
        for (const double face : {0.0, wall.thickness}) {
            const double distance = (face - local.y) / across, x = local.x + distance * along;
            if (distance < -tolerance::weld || x < 0 || x > wall.length) continue;
            if (!best || distance < best->distance) best = Met{w, distance};
        }
    }
    return best;
}

} // namespace

double side_reach(const Plan &house, const FloorPlace &room, const PlannedTimber &joist, int way,
                  double spacing) {
    constexpr int lines = 9; // over the joist's length, its ends among them
    const double side = way < 0 ? joist.from.x : room.width - joist.from.x;
    const Vec2 toward = static_cast<double>(way) * flat(room.frame.x);
    std::vector<Met> met;
    for (int i = 0; i < lines; ++i) {
        const double y = std::clamp(joist.from.y + (joist.to.y - joist.from.y) * i / (lines - 1),
                                    joist.from.y + tolerance::clear, joist.to.y - tolerance::clear);
        const Vec2 start = flat(room.frame.to_world({joist.from.x, y, 0}));
        met.push_back(first_met(house, start, toward).value_or(Met{room.from, side + spacing}));
    }
    const auto by_distance = [](const Met &a, const Met &b) { return a.distance < b.distance; };
    const Met nearest = *std::ranges::min_element(met, by_distance);
    const bool at_side = nearest.distance <= side + house.walls[nearest.wall].thickness;
    double reach = side;
    for (const Met &m : met)
        reach = std::max(reach, at_side && m.wall == nearest.wall ? m.distance
                                                                  : std::min(m.distance, side + spacing));
    return reach;
}

} // namespace roundlay
