// Where a hand takes hold of the slopes of a tail.
#pragma once

#include "kernel/layout/layout.h"

#include <optional>
#include <vector>

namespace roundlay::window {

inline const WallPlace &wall_of(const Layout &layout, Index<WallPlace> wall) {
    return layout.walls[wall];
}

/// The top of one tail, in the world as laid out.
struct TailHold {
    Index<Piece> piece;
    std::vector<Vec3> outline; ///< of the tail's top
    Vec3 along, across;        ///< on its top: at its end, and at its side away from the log's own wall
    double along_arm = 0, across_arm = 0; ///< mm from the corner's middle to them: rise there = slope * arm
};

/// The tail that the piece has at the corner; nothing where it has none with a seam above it.
std::optional<TailHold> tail_hold(const Layout &layout, const CornerPlace &corner, Index<Piece> piece);

} // namespace roundlay::window
