// What cuts are cut from.
#pragma once

namespace roundlay {

/// What a piece is cut from in its own frame, whose x is level: from (0,0,0) to (length, width, height). What
/// is ordered for it is its stock (pieces/stock.h).
struct Blank {
    double length = 0; ///< along x, over everything incl. overhangs
    double width = 0;  ///< along y, outside face to inside face
    double height = 0; ///< along z
};

} // namespace roundlay
