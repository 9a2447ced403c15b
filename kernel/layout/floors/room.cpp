#include "kernel/layout/floors/room.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/plan/reach.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

struct Stretch {
    double from = 0, to = 0;
};

/// The free stretch of a wall along `right`, measured from `origin`: over its whole thickness.
Stretch seen_along(const Plan &plan, Index<WallPlace> wall, Vec2 origin, Vec2 right) {
    const FreeStretch free = free_between(plan, wall);
    const WallPlace &place = plan.walls[wall];
    const auto at = [&](double x) { return dot(flat(place.frame.to_world({x, 0, 0})) - origin, right); };
    const double lean = std::abs(dot(flat(place.frame.y), right)) * place.thickness;
    const double slack = lean < parallel * place.thickness ? 0 : lean;
    return {std::min(at(free.from), at(free.to)) + slack, std::max(at(free.from), at(free.to)) - slack};
}

/// A line in a floor's frame: y at x = 0, and what it rises by.
struct FaceLine {
    double from = 0, rise = 0;
};

/// Of a wall the face that lies nearer to the other wall.
FaceLine near_face(const Frame &floor, const WallPlace &wall, double x) {
    const Vec3 way = floor.direction_to_local(wall.frame.x);
    const double rise = way.y / way.x;
    const auto face = [&](double y) {
        const Vec3 p = floor.to_local(wall.frame.to_world({0, y, 0}));
        return FaceLine{p.y - rise * p.x, rise};
    };
    const FaceLine one = face(0), other = face(wall.thickness);
    return one.from + one.rise * x < other.from + other.rise * x ? one : other;
}

void lie_askew(FloorPlace &floor, const WallPlace &to) {
    const FaceLine face = near_face(floor.frame, to, floor.width / 2);
    floor.rise = face.rise;
    floor.depth = std::min(face.from, face.from + face.rise * floor.width);
}

} // namespace

std::optional<WallFace> first_face(const Plan &plan, Vec2 start, Vec2 toward) {
    std::optional<WallFace> best;
    for (const auto w : plan.walls.indices()) {
        const WallPlace &wall = plan.walls[w];
        const double along = dot(flat(wall.frame.x), toward), across = dot(flat(wall.frame.y), toward);
        if (std::abs(along) > off_square * std::abs(across)) continue;
        const Vec3 local = wall.frame.to_local({start.x, start.y, 0});
        const bool inside = across < 0; // it comes from the inside
        const double distance = (inside ? local.y - wall.thickness : -local.y) / std::abs(across);
        const double x = local.x + distance * along;
        const FreeStretch free = free_between(plan, w);
        if (distance < -tolerance::weld || x < free.from || x > free.to) continue;
        if (!best || distance < best->distance) best = WallFace{w, inside, x, distance};
    }
    return best;
}

std::optional<FloorPlace> room_between(const Plan &plan, Index<WallPlace> from, Index<WallPlace> to) {
    const WallPlace &start = plan.walls[from];
    const WallPlace &end = plan.walls[to];
    const double turn = std::abs(cross(flat(start.frame.x), flat(end.frame.x)));
    if (turn > off_square * std::abs(dot(flat(start.frame.x), flat(end.frame.x)))) return std::nullopt;
    const double middle = turn > parallel ? end.length / 2 : 0;
    const double beyond = start.frame.to_local(end.frame.to_world({middle, end.thickness / 2, 0})).y;
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
    const Vec2 origin = face + low * right;
    floor.frame.origin = {origin.x, origin.y, 0};
    if (turn > parallel) lie_askew(floor, end);
    if (floor.width <= 0 || floor.depth <= 0) return std::nullopt;
    return floor;
}

} // namespace roundlay
