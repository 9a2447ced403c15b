// Pegs by rule: how many a joint needs, where they may stand, staggered from round to round.
#pragma once

#include "kernel/layout/pieces/pieces.h"

#include <utility>
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

/// Where a piece is bored already, and how far a peg's bore keeps from there. In x of what begins at
/// `origin`.
std::vector<std::pair<double, double>> bores_in(const Piece &piece, double origin, const PegRule &rule);

/// Takes (from, to) out of a list of spans.
std::vector<Span> without(const std::vector<Span> &spans, double from, double to);

/// What two lists of spans share.
std::vector<Span> common(const std::vector<Span> &a, const std::vector<Span> &b);

/// False where pegs as they are stated cannot be bored; adds findings.
bool check_peg_rule(const Shell &shell, Layout &layout);

/// Appends pegs and the bores they need; adds findings where too few fit or they stand too far apart. False
/// on an error.
bool lay_out_pegs(const Shell &shell, Layout &layout, const std::vector<std::vector<CourseSpans>> &spans);

} // namespace roundlay
