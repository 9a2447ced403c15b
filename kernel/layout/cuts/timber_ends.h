// Where the end of a floor's timber lies in a log, and how that end is cut.
#pragma once

#include "kernel/geometry/plane.h"
#include "kernel/layout/cuts/log_sides.h"

#include <string>

namespace roundlay {

/// A housing let into a side face for the end of a joist, beam or trimmer. Seen from above it is a trapezoid,
/// even about x, and open at the face.
struct PocketCut {
    double x = 0;                              ///< its middle along this piece
    double y_face = 0, y_back = 0;             ///< the face it opens in, and how far it reaches
    double half_at_face = 0, half_at_back = 0; ///< half its width there; wider at the back where it is tailed
    Plane bed;         ///< its floor, normal upward; under the piece where the pocket begins in the log below
    double z_top = 0;  ///< its ceiling; over the piece where it is open at the top
    std::string holds; ///< tag of the timber whose end lies in it
};

/// One side of a tailed end of a joist: takes what lies beyond an upright plane between x_from and x_to.
struct CheekCut {
    End end = End::datum;
    LogFace side = LogFace::outside; ///< or inside
    double x_from = 0, x_to = 0;
    Plane plane; ///< outward
};

} // namespace roundlay
