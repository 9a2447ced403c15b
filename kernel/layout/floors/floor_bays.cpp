#include "kernel/layout/floors/floor_bays.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/floors/footprint.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// What encloses a wall in the room's own frame.
Box3 seen_from(const FloorPlace &room, const WallPlace &wall) {
    Box3 box{{1e300, 1e300, 0}, {-1e300, -1e300, 0}};
    for (const Vec2 c :
         {Vec2{0, 0}, Vec2{wall.length, 0}, Vec2{wall.length, wall.thickness}, Vec2{0, wall.thickness}}) {
        const Vec3 p = room.frame.to_local(wall.frame.to_world({c.x, c.y, 0}));
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), 0};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), 0};
    }
    return box;
}

bool stands_in(const FloorPlace &room, const WallPlace &wall) {
    return in_each_others_way({room.frame, room.width, room.depth, 0, 1},
                              {wall.frame, wall.length, wall.thickness, 0, 1}, tolerance::clear);
}

/// From the wall that the joists start in to the one that they end in.
bool parts_it_along_the_joists(const FloorPlace &room, const WallPlace &wall, const Box3 &box) {
    const Vec2 way = flat(wall.frame.x);
    const bool along =
        std::abs(dot(way, flat(room.frame.x))) <= off_square * std::abs(dot(way, flat(room.frame.y)));
    return along && box.low.y <= tolerance::clear && box.high.y >= room.depth - tolerance::clear;
}

} // namespace

FloorBays::FloorBays(const Plan &plan, const FloorPlace &room) {
    std::vector<Bay> walls;
    for (const auto w : plan.walls.indices()) {
        const WallPlace &wall = plan.walls[w];
        if (w == room.from || w == room.to || !stands_in(room, wall)) continue;
        const Box3 box = seen_from(room, wall);
        if (!parts_it_along_the_joists(room, wall, box)) in_the_way_ = &wall;
        walls.emplace_back(box.low.x, box.high.x);
        if (in_the_way_) break;
    }
    std::sort(walls.begin(), walls.end());
    double from = 0;
    for (const auto &[low, high] : walls) {
        bays_.emplace_back(from, low);
        from = high;
    }
    bays_.emplace_back(from, room.width);
}

const FloorBays::Bay *FloorBays::around(double from, double to) const {
    for (const Bay &bay : bays_)
        if (from >= bay.first - tolerance::weld && to <= bay.second + tolerance::weld) return &bay;
    return nullptr;
}

std::vector<FloorBays::Bay> FloorBays::with(const std::vector<double> &joists) const {
    std::vector<Bay> carried;
    for (const Bay &bay : bays_)
        if (std::any_of(joists.begin(), joists.end(),
                        [&](double x) { return x > bay.first && x < bay.second; }))
            carried.push_back(bay);
    return carried;
}

bool FloorBays::are_neighbours(const Bay &bay, const Bay &next) const {
    return std::none_of(bays_.begin(), bays_.end(),
                        [&](const Bay &b) { return b.first > bay.first && b.first < next.first; });
}

} // namespace roundlay
