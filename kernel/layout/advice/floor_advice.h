// Where to lay a floor so that all its timbers lie well: tried before it is said.
#pragma once

#include "kernel/layout/advice/trial.h"
#include "kernel/layout/floors/floors.h"

namespace roundlay {

/// Puts behind each finding that a floor's level is to blame for the least change of it with which all of
/// them go and no other comes: one for the whole floor, since it has one level.
void advise_on_floors(const Shell &shell, Layout &layout, const std::vector<FloorMove> &moves,
                      const LayOut &try_out);

/// Puts behind each finding of a floor whose two walls do not face each other which two would do: the first
/// such two between which the whole floor fits as it is stated, one of its own walls first.
void advise_on_walls_of_floors(const Shell &shell, Layout &layout, const LayOut &try_out);

} // namespace roundlay
