// The wood of a piece where it stands.
#pragma once

#include "kernel/layout/wood/body.h"

namespace roundlay {

struct PlacedPiece {
    std::vector<Cell> cells; ///< world
    std::vector<Box3> boxes; ///< of the cells
    Box3 box;                ///< of them all; of a piece of which no wood is left, one that meets none
};

PlacedPiece placed(const Body &body, const Frame &frame);

/// True where they share more than a face.
bool boxes_meet(const Box3 &a, const Box3 &b);

} // namespace roundlay
