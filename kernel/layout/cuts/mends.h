// Where other wood comes in the place of a part of a log.
#pragma once

#include "kernel/geometry/plane.h"
#include "kernel/layout/cuts/log_sides.h"

#include <string>

namespace roundlay {

enum class MendUse {
    let_in, ///< for a piece let into a face
    lap     ///< one half of a log's end, for the other half of the end that it is lapped with
};

/// Takes what lies beyond the bed, over a stretch of the log and of one long face: so far the log's wood
/// stays, and the other piece's lies on it.
struct MendCut {
    MendUse use = MendUse::let_in;
    LogFace face = LogFace::outside; ///< that it opens to
    double x_from = 0, x_to = 0;     ///< past the blank's end where it runs out there
    double low = 0, high = 0; ///< z on a side face, y on the top and under one; past the blank's edges where
                              ///< it takes the whole face
    Plane bed;                ///< outward of the wood that stays, toward the face
    std::string piece;        ///< tag of the other wood
};

} // namespace roundlay
