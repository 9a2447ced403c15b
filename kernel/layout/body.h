// The wood of one piece, in doubles: a polyhedron for everything plane, and its bores beside it.
#pragma once

#include "kernel/geometry/cell.h"
#include "kernel/geometry/polyhedron.h"
#include "kernel/layout/layout.h"

#include <vector>

namespace roundlay {

struct Body {
    std::vector<Cell> cells; ///< convex, disjoint, together the hewn wood without bores
    Polyhedron hewn;         ///< the border of the cells' union
    std::vector<Bore> bores; ///< upright, each clear of the others and of all faces' borders unless !bores_clear
    bool bores_clear = true; ///< every bore opens whole in a nearly level face, or ends blind in wood
    double volume = 0;       ///< mm3, bores taken off; exact when bores_clear
    Vec3 centroid;           ///< piece frame
};

/// Cuts the blank in doubles. Piece frame.
Body body_of(const Piece &piece);

} // namespace roundlay
