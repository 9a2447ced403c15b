// Which cut made each face of a piece: for files in which a shop looks at a face and asks what it is.
#pragma once

#include "kernel/boundary/boundary.h"

#include <cstddef>
#include <optional>
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

struct MadeBy {
    std::optional<std::size_t> cut; ///< index into Piece::cuts; none: no cut reaches it, it is the blank's
    FacePart part = FacePart::top;
};

/// One for each of Boundary::faces. `border`: of that piece's body, piece frame.
std::vector<MadeBy> made_by(const Piece &piece, const Boundary &border);

} // namespace roundlay
