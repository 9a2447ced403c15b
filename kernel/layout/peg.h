// Pegs as they stand.
#pragma once

#include "kernel/geometry/vec.h"
#include "kernel/layout/index.h"

#include <string>

namespace roundlay {

struct Piece;

struct Peg {
    std::string name; ///< e.g. "C-07-2/1": upper piece and number from its datum end
    Index<Piece> upper, lower;
    Vec3 top; ///< world, centre of the peg's upper end
    double diameter = 0, length = 0;
};

} // namespace roundlay
