// The wood of one piece, in doubles: a polyhedron for everything plane, and its bores and round surfaces
// beside it.
#pragma once

#include "kernel/geometry/cell.h"
#include "kernel/geometry/polyhedron.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/round_flats.h"

#include <vector>

namespace roundlay {

struct Body {
    std::vector<Cell> cells; ///< convex, disjoint, together the hewn wood without bores
    Polyhedron hewn;         ///< the border of the cells' union; round surfaces are flats with Plane::round
    std::vector<Bore>
        bores; ///< upright, each clear of the others and of all faces' borders unless !bores_clear
    bool bores_apart = true; ///< of one another
    bool bores_clear =
        true; ///< they are apart, and every bore opens whole in a nearly level face, or ends blind in wood
    std::vector<RoundSurface> rounds; ///< Plane::round counts these from 1
    double volume = 0; ///< mm3, bores taken off; exact when bores_clear and rounds is empty, else to 3e-4 of
                       ///< the log's, or of as much of a round log as new wood in one is long
    Vec3 centroid;     ///< piece frame

    // For exact solids of what has round surfaces:
    std::vector<Cell> planed_cells;
    Polyhedron planed; ///< what the plane cuts alone leave, of a blank that is larger where the log is round:
                       ///< the border of planed_cells
    std::vector<RoundCut> stick;
    std::vector<ScopeCut> scopes;
};

/// One for each of Layout::models.
using Bodies = Indexed<Body, Model>;

/// Cuts the blank in doubles. Piece frame.
Body body_of(const Piece &piece);

} // namespace roundlay
