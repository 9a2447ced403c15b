// Square cuts.
#pragma once

#include "kernel/geometry/plane.h"

#include <string>

namespace roundlay {

enum class BoxUse {
    sill,    ///< from the top of a log down: the opening starts inside this log
    header,  ///< from the underside up: the opening ends inside this log
    through, ///< the opening lies within one log
    groove,  ///< the upright groove in a jamb that a spline slides in
    seat,    ///< of a joist: from the underside up, where it sits on a beam or ends in another timber
    step     ///< from the underside up: the foundation stands higher there
};

/// A square cut, e.g. right through the thickness where an opening takes part of a log's height.
struct BoxCut {
    BoxUse use = BoxUse::sill;
    Box3 box; ///< reaches past the blank where the cut is open
    std::string
        opening; ///< what the person calls it; of a seat: tag of the timber that it sits on; or the step
    double fall =
        0; ///< of a sill: its floor falls outward by this per unit of y, from the box's floor at `fall_from`
    double fall_from = 0; ///< y of the wall's inside face
};

} // namespace roundlay
