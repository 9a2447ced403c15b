// How far the boards of a floor reach past its outermost joist.
#pragma once

#include "kernel/layout/floors/floor_plan.h"

namespace roundlay {

/// From the middle of a joist to the wall at that side of its room (way -1: left, 1: right), mm, where it is
/// furthest along the joist: a wall that is not square to the others stands further away at one end. Where
/// no wall stands at the side of the room, the floor may go on there: one spacing past that side.
double side_reach(const Plan &house, const FloorPlace &room, const PlannedTimber &joist, int way,
                  double spacing);

} // namespace roundlay
