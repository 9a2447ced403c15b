// Where a drag comes to rest.
#pragma once

#include "kernel/measure/measure.h"

#include <vector>

namespace roundlay::window {

struct Snapped {
    double at = 0;
    bool on_line = false; ///< one of the lines, not the grid
};

/// The nearest of the lines within reach, else the nearest step of the grid. Millimetres.
Snapped snapped(double at, const std::vector<double> &lines, double reach, double grid);

/// The nearest slope that is easily set out: level, or one in a half or whole number; free = to three
/// figures. At most 1 in 1.
double snapped_slope(double rise_per_run, bool free);

} // namespace roundlay::window
