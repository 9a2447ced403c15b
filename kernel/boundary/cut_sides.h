// The plane faces that a cut leaves in the wood, and what each is of it.
#pragma once

#include "kernel/layout/cuts/blank.h"
#include "kernel/layout/cuts/cut.h"

#include <vector>

namespace roundlay {

/// What a face is of the cut that made it, or of the log.
enum class FacePart {
    top,
    under,
    outside,
    inside,
    datum_end,
    far_end,  ///< these six: hewn, sawn, or the blank's own
    wane,     ///< of the round stick
    seam,     ///< that a log lies on another with, at a corner
    shoulder, ///< upright, where a notch ends
    scope,    ///< round, over a round log
    cheek,    ///< upright side of a saddle or of a joist's tail
    sill,     ///< of an opening, at its foot
    head,     ///< of an opening
    jamb,     ///< of an opening within a log
    bottom,   ///< of a groove or a blind bore
    side,     ///< of a groove, pocket or piece let in
    seat,     ///< of a timber, or of a log on a step
    bed,      ///< of a pocket or a piece let in
    back,     ///< of a pocket
    ceiling,  ///< of a pocket
    end,      ///< where a seat, a groove, a tail or a piece let in ends along its log
    bore      ///< wall of a bore
};

FacePart part_of(LogFace face);

/// One plane that bounds what a cut takes.
struct CutSide {
    Plane plane; ///< outward of what is taken, into the wood that stays
    FacePart part = FacePart::top;
};

/// The cut takes what lies within all of these. Of a scope besides: what lies below its cylinder. Planes that
/// the cut is open at are left out where region_of leaves them out. None of a bore and of the round stick.
std::vector<CutSide> sides_of(const Cut &cut, const Blank &blank);

/// How high the wood is taken to by a scope, at that place seen from above; its axis level.
double scoped_to(const ScopeCut &cut, Vec3 place);

} // namespace roundlay
