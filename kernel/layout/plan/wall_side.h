// What the two sides of a wall are called.
#pragma once

#include "kernel/layout/walls.h"

namespace roundlay {

/// How many walls go round the house; partitions come after them. 0 where nothing is laid out.
std::size_t outer_walls(const Plan &plan);

/// Has it rooms on both sides?
bool is_partition(const Plan &plan, Index<WallPlace> wall);

/// "outside" or "inside"; a partition has neither: the quarter of the sky that this side faces, "east" or
/// "north-west". `outside` is the side toward which the wall's frame has no wood.
std::string side_of_wall(const Plan &plan, Index<WallPlace> wall, bool outside);

} // namespace roundlay
