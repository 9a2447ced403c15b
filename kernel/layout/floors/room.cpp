#include "kernel/layout/floors/room.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/plan/reach.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double square = 1e-9; ///< sine of the angle under which two lines are called parallel

struct Stretch {
    double from = 0, to = 0;
};

/// The free stretch of a wall along `right`, measured from `origin`.
Stretch seen_along(const Plan &plan, Index<WallPlace> wall, Vec2 origin, Vec2 right) {
    const FreeStretch free = free_between(plan, wall);
    const Frame &frame = plan.walls[wall].frame;
    const auto at = [&](double x) { return dot(flat(frame.to_world({x, 0, 0})) - origin, right); };
    return {std::min(at(free.from), at(free.to)), std::max(at(free.from), at(free.to))};
}

} // namespace

std::optional<WallFace> first_face(const Plan &plan, Vec2 start, Vec2 toward) {
    std::optional<WallFace> best;
    for (const auto w : plan.walls.indices()) {
        const WallPlace &wall = plan.walls[w];
        if (std::abs(dot(flat(wall.frame.x), toward)) > square) continue;
        const Vec3 local = wall.frame.to_local({start.x, start.y, 0});
        const bool inside = dot(flat(wall.frame.y), toward) < 0; // it comes from the inside
        const double distance = inside ? local.y - wall.thickness : -local.y;
        const FreeStretch free = free_between(plan, w);
        if (distance < -tolerance::weld || local.x < free.from || local.x > free.to) continue;
        if (!best || distance < best->distance) best = WallFace{w, inside, local.x, distance};
    }
    return best;
}

std::optional<FloorPlace> room_between(const Plan &plan, Index<WallPlace> from, Index<WallPlace> to) {
    const WallPlace &start = plan.walls[from];
    const WallPlace &end = plan.walls[to];
    if (std::abs(cross(flat(start.frame.x), flat(end.frame.x))) > square) return std::nullopt;
    const double beyond = start.frame.to_local(end.frame.to_world({0, end.thickness / 2, 0})).y;
    const bool inward = beyond > start.thickness / 2;
    FloorPlace floor;
    floor.from = from;
    floor.to = to;
    floor.frame.y = inward ? start.frame.y : -start.frame.y;
    floor.frame.x = inward ? start.frame.x : -start.frame.x;
    floor.depth = std::abs(beyond - (inward ? start.thickness : 0)) - end.thickness / 2;
    const Vec2 face = flat(start.frame.to_world({0, inward ? start.thickness : 0, 0}));
    const Vec2 right = flat(floor.frame.x);
    const Stretch a = seen_along(plan, from, face, right), b = seen_along(plan, to, face, right);
    const double low = std::max(a.from, b.from);
    floor.width = std::min(a.to, b.to) - low;
    if (floor.width <= 0 || floor.depth <= 0) return std::nullopt;
    const Vec2 origin = face + low * right;
    floor.frame.origin = {origin.x, origin.y, 0};
    return floor;
}

} // namespace roundlay
