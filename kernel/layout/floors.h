// Floors: joists, beams and trimmers, and the pockets for their ends.
#pragma once

#include "kernel/layout/pieces.h"

namespace roundlay {

/// Places every floor, appends its timbers to layout.pieces and layout.timbers and cuts the pockets into the logs
/// that carry them; pegs that come later keep clear of those. Adds findings; false when a timber cannot be placed.
bool lay_out_floors(const Shell &shell, Layout &layout, std::vector<std::vector<CourseSpans>> &spans);

} // namespace roundlay
