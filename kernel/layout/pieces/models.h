// Which pieces are alike, and the order of the raise.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Groups pieces that are made alike (`alike` of kernel/layout/piece_shape.h).
void group_models(Layout &layout);

/// Lowest first; within a height by wall and number. Every piece then comes down on what it rests on.
void order_raise(Layout &layout, const std::vector<double> &centres);

} // namespace roundlay
