// The room that a floor lies in, as it is seen from a timber's end: which wall stands there.
#pragma once

#include "kernel/layout/timber.h"
#include "kernel/layout/walls.h"

#include <optional>

namespace roundlay {

/// A wall's face met by a line that runs square to it.
struct WallFace {
    Index<WallPlace> wall;
    bool inside = true;  ///< the face at y = thickness, else the one at y = 0
    double x = 0;        ///< along the wall
    double distance = 0; ///< from the start of the line
};

/// The first wall square to `toward` that a line meets, clear of the wall's notches.
std::optional<WallFace> first_face(const Plan &plan, Vec2 start, Vec2 toward);

/// Where the floor from one wall to another lies, its level and name left out; nothing where the walls are
/// not parallel or do not face each other.
std::optional<FloorPlace> room_between(const Plan &plan, Index<WallPlace> from, Index<WallPlace> to);

inline Vec2 flat(Vec3 v) {
    return {v.x, v.y};
}

} // namespace roundlay
