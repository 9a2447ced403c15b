// What is cut from a blank. All numbers are in the piece frame, in millimetres.
//
// A piece is its blank less its cuts. Every joint that layout knows ends up as cuts of these kinds, so
// that solids, sheets and lists never ask which joint they come from.
#pragma once

#include "kernel/geometry/plane.h"
#include "kernel/geometry/tolerance.h"
#include "kernel/shell/shell.h"

#include <algorithm>
#include <optional>
#include <string>
#include <variant>

namespace roundlay {

enum class End { datum, far }; ///< datum = left seen from outside (x = 0), far = the other
enum class Side { top, under };

/// A notch cut at a corner: takes the wood between x_from and x_to that lies beyond the seam plane.
/// An open one shapes a tail; inside the length it is a housed notch.
/// The upright ends of the cut inside the blank are shoulders.
struct SeamCut {
    End end = End::datum;
    Side side = Side::top;
    double x_from = 0, x_to = 0; ///< on the middle of the blank's width
    Plane seam;         ///< normal points out of the wood that stays: upward for top, downward for under
    std::string corner; ///< e.g. "AB"
    std::string other; ///< tag of the piece on the other side of the seam; empty at the foundation or the top
    double skew = 0;   ///< the shoulders run toward +x by this much per unit of y; 0 at square corners
    double proud = 0;  ///< left standing at the shoulders on the bench and pared when the logs are fitted
    bool runs_on = false; ///< the log goes on past the crossing wall: `end` only says which half of the log
    /// The log ends within the cut, at `end`, which has no shoulder there. So has one that reaches the
    /// blank's own end; ends at a slant are only told by this.
    bool open = false;
    bool open_at(End at, double blank_length) const {
        if (open && at == end) return true;
        return at == End::datum ? x_from < tolerance::thinnest : x_to > blank_length - tolerance::thinnest;
    }
};

enum class BoxUse {
    sill,    ///< from the top of a log down: the opening starts inside this log
    header,  ///< from the underside up: the opening ends inside this log
    through, ///< the opening lies within one log
    groove,  ///< the upright groove in a jamb that a spline slides in
    seat,    ///< of a joist: from the underside up, where it sits on a beam or ends in another timber
    step     ///< from the underside up: the foundation stands higher there
};

/// The four long faces of a log, and its two ends.
enum class LogFace { top, under, outside, inside, datum_end, far_end };

/// A face of a log that is not the blank's own: a tapered log's faces run at a slant to its blank, and so do
/// ends at corners that are not square. Takes everything beyond the plane, over the whole piece.
struct FaceCut {
    LogFace face = LogFace::top;
    Plane plane; ///< outward
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

/// An upright round hole for a peg, or one that a person placed.
struct Bore {
    double x = 0, y = 0;         ///< centre line
    double z_from = 0, z_to = 0; ///< the wood bored, z_from < z_to; at a blank's face the bore is open there
    double diameter = 0;
    int peg = -1;         ///< index into Layout::pegs; -1 where it is for none
    bool from_top = true; ///< which face it is bored from
    bool through = true;
    std::optional<BoreUse> use = std::nullopt; ///< what a person stated it for; none: a peg's
};

/// The surface of the round stick that a log is made of: an even cylinder. Takes everything outside it, over
/// the whole piece; where the blank lies within it the flats stay as they are hewn.
struct RoundCut {
    Vec3 from, to; ///< its axis at x = 0 and at x = length
    double radius = 0;
};

enum class ScopeUse {
    groove, ///< along the log, over the one below it in its own wall
    saddle  ///< over a log that crosses
};

/// Where a round log lies on another: takes everything below that log's own surface, straight down, so that
/// it can be lowered onto it.
struct ScopeCut {
    ScopeUse use = ScopeUse::saddle;
    Vec3 at;           ///< a point of the lower log's axis
    Vec3 along;        ///< that axis, level, unit; of a groove toward +x
    double radius = 0; ///< of the cut: the lower log's, and the scribe
    double scribe = 0; ///< by how much it clears the lower log
    double cheeks = 0; ///< of a saddle over a log that is hewn flat: upright, so far from its middle; 0: none
    double x_from = 0, x_to = 0; ///< of a groove: over this stretch, past the blank's ends where it runs out
    End end = End::datum;        ///< of a saddle
    bool runs_on = false;        ///< as SeamCut
    std::string corner;          ///< of a saddle
    std::string other;           ///< tag of the log below

    /// What is taken to either side of that axis.
    double half_width() const { return cheeks > 0 ? std::min(cheeks, radius) : radius; }
};

using Cut = std::variant<FaceCut, SeamCut, BoxCut, PocketCut, CheekCut, Bore, RoundCut, ScopeCut>;

} // namespace roundlay
