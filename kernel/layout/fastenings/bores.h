// Bores that a person placed: bolts, hold-down rods, ways for wiring, holes found in old wood.
#pragma once

#include "kernel/layout/pieces/pieces.h"

namespace roundlay {

/// Cuts each stated bore into the logs it goes through; pegs that come later keep clear of it. Adds findings;
/// false when one misses its logs.
bool lay_out_bores(const Shell &shell, Layout &layout, const std::vector<std::vector<CourseSpans>> &spans);

} // namespace roundlay
