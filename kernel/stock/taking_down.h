// In which order pieces come down, and what each asks for before it is lifted. Raising is the same from the
// end.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/wood/body.h"

#include <vector>

namespace roundlay {

/// One piece on its way down. All of it is geometry: whether a wall stands while it is open is for whoever
/// takes it down to see.
struct DownStep {
    Index<Piece> piece;
    std::vector<Index<Peg>> pegs; ///< that hold it to what lies under it: drawn, or sawn, before it rises
    double rise = 0;              ///< mm straight up, from where on it lies over all that it touched
    /// Pieces that are held by nothing but their pegs once this one is away: they stand between openings, and
    /// no log lies on them any more.
    std::vector<Index<Piece>> loose;
};

/// The reverse of the raise: each piece can rise when its turn comes (nothing lies on it, its tails are
/// free, joists come before the logs that they are let into). Takes its time: all wood is held against what
/// lies in its way.
std::vector<DownStep> taking_down(const Layout &layout, const Bodies &bodies);

/// One piece on its way up.
struct UpStep {
    Index<Piece> piece;
    std::vector<Index<Peg>> pegs; ///< that are driven through it into what lies under it
};

/// In the order of the raise.
std::vector<UpStep> raising(const Layout &layout);

} // namespace roundlay
