// Figures that a person would state, in either system.
#pragma once

#include "kernel/measure/measure.h"

namespace roundlay {

/// The one or the other.
Length round_figure(UnitSystem units, double mm, double inches);

/// What places step by where nothing better is near: 10 mm or 1/2 in.
double grid_step(UnitSystem units);
/// What a search steps along a wall by: 100 mm or 4 in.
double wide_step(UnitSystem units);
/// What heights and sizes of logs are stated to: 5 mm or 1/4 in.
double fine_step(UnitSystem units);

} // namespace roundlay
