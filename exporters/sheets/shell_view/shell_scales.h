// The scales that walls, rounds and poles are drawn to.
#pragma once

#include "exporters/sheets/cut_sheet/scales.h"

namespace roundlay::sheets {

/// From the largest to the smallest.
std::span<const Scale> shell_scales(UnitSystem system);

} // namespace roundlay::sheets
