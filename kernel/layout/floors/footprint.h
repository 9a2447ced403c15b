// Upright boxes seen from above: do two of them stand in each other's way?
#pragma once

#include "kernel/geometry/vec.h"

namespace roundlay {

/// A box on a level frame: from (0, 0) to (length, width) of the frame's x and y, between two heights.
struct Footprint {
    Frame frame;
    double length = 0, width = 0;
    double low = 0, high = 0; ///< world z
};

/// True where they share more than a film `clear` thick.
bool in_each_others_way(const Footprint &a, const Footprint &b, double clear);

} // namespace roundlay
