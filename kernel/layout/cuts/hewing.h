// What a log is before it is notched: faces that are hewn, and the round stick that it was.
#pragma once

#include "kernel/geometry/plane.h"
#include "kernel/layout/cuts/log_sides.h"

namespace roundlay {

/// A face of a log that is not the blank's own: a tapered log's faces run at a slant to its blank, and so do
/// ends at corners that are not square. Takes everything beyond the plane, over the whole piece.
struct FaceCut {
    LogFace face = LogFace::top;
    Plane plane; ///< outward
};

/// The surface of the round stick that a log is made of: an even cylinder. Takes everything outside it, over
/// the whole piece; where the blank lies within it the flats stay as they are hewn.
struct RoundCut {
    Vec3 from, to; ///< its axis at x = 0 and at x = length
    double radius = 0;
};

} // namespace roundlay
