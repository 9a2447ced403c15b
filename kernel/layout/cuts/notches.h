// Where logs of two walls cross, and where a round log lies on another.
#pragma once

#include "kernel/geometry/plane.h"
#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/log_sides.h"

#include <algorithm>
#include <string>

namespace roundlay {

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

} // namespace roundlay
