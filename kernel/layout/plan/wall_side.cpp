#include "kernel/layout/plan/wall_side.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace roundlay {

std::size_t outer_walls(const Plan &plan) {
    // the walk round the house has a corner for each of its walls
    return static_cast<std::size_t>(
        std::count_if(plan.corners.begin(), plan.corners.end(),
                      [](const CornerPlace &c) { return c.kind == CornerKind::corner; }));
}

bool is_partition(const Plan &plan, Index<WallPlace> wall) {
    const std::size_t outer = outer_walls(plan);
    return outer > 0 && wall.at() >= outer;
}

std::string side_of_wall(const Plan &plan, Index<WallPlace> wall, bool outside) {
    if (!is_partition(plan, wall)) return outside ? "outside" : "inside";
    constexpr std::array<const char *, 8> quarters = {"east", "north-east", "north", "north-west",
                                                      "west", "south-west", "south", "south-east"};
    const Vec3 in = plan.walls.at(wall).frame.y, faces = outside ? -in : in;
    const auto eighth = std::lround(std::atan2(faces.y, faces.x) / (std::numbers::pi / 4));
    return quarters[static_cast<std::size_t>((eighth + 8) % 8)];
}

} // namespace roundlay
