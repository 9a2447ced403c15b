// Wall elevations: every log with its tag, openings, heights of the rounds; from outside and from inside.
#pragma once

#include "exporters/sheets/frame/options.h"

#include <vector>

namespace roundlay::sheets {

/// Both elevations of each wall, on as few sheets as they take. `bodies` are those of Layout::models.
std::vector<Sheet> wall_elevations(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                                   const SheetOptions &options);

} // namespace roundlay::sheets
