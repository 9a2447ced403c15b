// The plan as a text states it, for whoever draws it while no shell can be built of it.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Walls, and corners where they are known, without pieces: as laid out where the plan holds, else as walked
/// from the first corner, wall by wall, whether or not the walk comes back to it. Partitions that lead
/// nowhere are drawn for a metre.
Layout stated_plan(const Shell &shell);

} // namespace roundlay
