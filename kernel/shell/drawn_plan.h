// A plan from its corners, as a hand draws them.
#pragma once

#include "kernel/shell/shell.h"

#include <vector>

namespace roundlay {

/// A corner of the outside faces, from an origin anywhere.
struct PlanPoint {
    Length east, north;
    bool operator==(const PlanPoint &) const = default;
};

/// Letters of the alphabet: no plan has more walls.
inline constexpr std::size_t most_drawn_walls = 26;

/// Walls A, B, C … once round the corners, counter-clockwise whichever way they were drawn, from the
/// westernmost of the southernmost ones. A corner in line with its neighbours is none. Empty where fewer than
/// three are left, or more than most_drawn_walls. Whether the walls can be built is for layout to say.
std::vector<Wall> drawn_plan(std::vector<PlanPoint> corners);

} // namespace roundlay
