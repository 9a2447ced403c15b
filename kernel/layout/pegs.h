// Pegs by rule: how many a joint needs, where they may stand, staggered from round to round.
#pragma once

#include "kernel/layout/pieces.h"

namespace roundlay {

/// What one joint of an upper piece on a lower one needs. All in wall x.
struct Joint {
    std::vector<Span> allowed;  ///< where a bore's centre may be: clear of ends, shoulders and openings
    Span reach;                 ///< from the first fastening place to the last: locked corners or allowed ends
    bool locked_left = false, locked_right = false;
    int fewest = 2;             ///< pegs, at least
    bool shifted = false;       ///< every second joint is staggered
};

/// Peg places of one joint, ascending, each at least `between` from the others and from `taken`. Fewer than
/// joint.fewest when they do not fit.
std::vector<double> place_pegs(const Joint &joint, const PegRule &rule, const std::vector<double> &taken);

/// Appends pegs and the bores they need; adds findings where too few fit. False on an error.
bool lay_out_pegs(const Shell &shell, Layout &layout, const std::vector<std::vector<CourseSpans>> &spans);

} // namespace roundlay
