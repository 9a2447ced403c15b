// Floors: joists, beams and trimmers, and the pockets for their ends.
#pragma once

#include "kernel/layout/pieces/pieces.h"

namespace roundlay {

/// What one end of a timber asks of its floor's level. Others may ask otherwise: see floor_advice.h.
struct FloorMove {
    std::size_t finding = 0; ///< index into Layout::findings
    std::size_t floor = 0;
    double by = 0; ///< up; negative: down
};

/// Places every floor, appends its timbers to layout.pieces and layout.timbers and cuts the pockets into the
/// logs that carry them; pegs that come later keep clear of those. Adds findings, and to `moves` those that
/// the level is to blame for; false when a timber cannot be placed.
bool lay_out_floors(const Shell &shell, Layout &layout, std::vector<std::vector<CourseSpans>> &spans,
                    std::vector<FloorMove> &moves);

} // namespace roundlay
