// The room that a floor lies in, as it is seen from a timber's end: which wall stands there.
#pragma once

#include "kernel/layout/timber.h"
#include "kernel/layout/walls.h"

#include <optional>

namespace roundlay {

/// Two walls face each other up to this slope between them, and a timber lies square to a wall: 20 mm in a
/// metre, as where one side of a room of 6 m is 120 mm longer than the one across from it. Over a bearing of
/// 75 mm the timber's side then runs 1.5 mm off, by which its pocket, which is cut square to the wall, is
/// wider: about what a chisel leaves. Further off the timber should lie another way, and the walls of old
/// houses stand nearer to square. Our choice, no source.
inline constexpr double off_square = 1.0 / 50;

inline constexpr double parallel = 1e-9; ///< slope under which two lines are called so

/// A wall's face met by a line that runs square to it, but for `off_square`.
struct WallFace {
    Index<WallPlace> wall;
    bool inside = true;  ///< the face at y = thickness, else the one at y = 0
    double x = 0;        ///< along the wall
    double distance = 0; ///< from the start of the line
};

/// The first wall square to `toward`, but for `off_square`, that a line meets, clear of the wall's notches.
std::optional<WallFace> first_face(const Plan &plan, Vec2 start, Vec2 toward);

/// Where the floor from one wall to another lies, its level and name left out; nothing where the walls run
/// further apart than `off_square` or do not face each other.
std::optional<FloorPlace> room_between(const Plan &plan, Index<WallPlace> from, Index<WallPlace> to);

inline Vec2 flat(Vec3 v) {
    return {v.x, v.y};
}

} // namespace roundlay
