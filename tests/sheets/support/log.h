// Pieces made by hand, with numbers that can be worked out on paper.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay::test {

/// 5000 x 200 x 230; a full dovetail 1:8 at both ends, a sill cut 900 wide and 80 deep at 2000, four pegs.
Piece sample_log();

/// In the middle of that log's thickness: right through it, or from above to half its height.
Bore peg(double x, bool through);

/// A layout of nothing but this piece.
Layout layout_of(const Piece &piece);

} // namespace roundlay::test
