// Pegs by rule: how many a joint needs, where they may stand, staggered from round to round.
#pragma once

#include "kernel/layout/fastenings/bores.h"
#include "kernel/layout/peg.h"
#include "kernel/layout/pieces/pieces.h"

#include <vector>

namespace roundlay {

/// What one joint of an upper piece on a lower one needs. All in wall x.
struct Joint {
    std::vector<Span>
        allowed; ///< where a bore's centre may be: clear of ends, shoulders, openings and other bores
    Span reach;  ///< from the first fastening place to the last: middles of locked corners, or allowed ends
    bool locked_left = false, locked_right = false;
    int fewest = 2;       ///< pegs, at least
    bool shifted = false; ///< every second joint is staggered
};

/// Peg places of one joint, ascending, each at least `between` from the others and from `taken`. Where they
/// do not fit fewer than joint.fewest, or further apart than the spacing.
std::vector<double> place_pegs(const Joint &joint, const PegRule &rule, const std::vector<double> &taken);

/// The longest way between two fastening places that follow one another, locked corners counted; the whole
/// reach where there are not two.
double widest_apart(const Joint &joint, const std::vector<double> &pegs);

/// Takes (from, to) out of a list of spans.
std::vector<Span> without(const std::vector<Span> &spans, double from, double to);

/// What two lists of spans share.
std::vector<Span> common(const std::vector<Span> &a, const std::vector<Span> &b);

/// Errors where pegs as they are stated cannot be bored.
Findings check_peg_rule(const Shell &shell);

/// Two logs of a wall that meet through pegs or a gap.
struct LogsThatMeet {
    Index<Piece> upper, lower;
};

struct Pegs {
    Indexed<Peg> pegs;
    std::vector<CutIn<Bore>> bores; ///< that they need
    std::vector<LogsThatMeet> meetings;
};

/// Says where too few pegs fit or they stand too far apart. `spans` are those of the logs with all that was
/// cut from them before, `bores` those that are stated. The rule must hold.
Found<Pegs> lay_out_pegs(const Shell &shell, const Plan &plan, const Foundation &foundation,
                         const Pieces &logs, const AllSpans &spans, const Bores &bores);

} // namespace roundlay
