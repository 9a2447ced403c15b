// The border that a bore adds to a solid: its rims, its wall, and a bottom where it is blind.
#pragma once

#include "kernel/boundary/boundary.h"

namespace roundlay {

/// Where one end of a bore lies, and in which face it opens.
struct BoreMeeting {
    BoreEnd end;
    std::optional<Index<BoundaryFace>> face; ///< none: blind
    bool clear = true;                       ///< else the rim crosses a border
    Polynomials rim;                         ///< where the face is round
};

void add_bore(Boundary &b, const Bore &bore, const BoreMeeting &below, const BoreMeeting &above);

/// The rim of a bore in a round surface, from its angle 0 on. No poles where it does not lie wholly in it.
Polynomials rim_in(const RoundSurface &surface, const Bore &bore, double z);

} // namespace roundlay
