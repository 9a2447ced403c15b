// What stands where a stated bore finds no whole log.
#pragma once

#include "kernel/layout/courses/courses.h"
#include "kernel/layout/foundation.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// Where along a wall, and half as wide as what is bored.
struct BoredPlace {
    Index<WallPlace> wall;
    double x = 0, half = 0;
};

/// Past the wall's end, on a step of the foundation, in an opening or in notches. `course`: the log right
/// through; nullptr where steps leave nothing of it.
Said no_log_there(const Shell &shell, const Plan &plan, const Foundation &foundation, const BoredPlace &at,
                  const Course *course);

} // namespace roundlay
