// What bores are for, what they are called on paper, and where those lie that a person placed.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// "P" peg, "B" bolt, "R" rod, "W" wiring, "H" hole as found: with a number on one piece's sheet.
const char *letter_of(const std::optional<BoreUse> &use);
/// "peg", "bolt", "rod", "wiring", "hole": with a number of the whole shell in plans and elevations.
const char *name_of(const std::optional<BoreUse> &use);

/// One log that a stated bore goes through.
struct BoredLog {
    Index<Piece> piece;
    Vec3 foot;           ///< world: the centre line where the bore enters the log from below
    double length = 0;   ///< of the bore in this log
    bool bedded = false; ///< it lies on the foundation there, or on a step of it
};

/// A stated bore as it lies, from its lowest log up.
struct PlacedBore {
    std::string mark;       ///< "rod 1": counted by use, in the order of Shell::bores
    std::size_t stated = 0; ///< index into Shell::bores
    Index<WallPlace> wall;
    std::vector<BoredLog> logs;
};

/// Every stated bore of a shell that is laid out.
std::vector<PlacedBore> placed_bores(const Shell &shell, const Layout &layout);

/// Does some of the log lie on the foundation, or on a step of it?
bool is_bedded(const Layout &layout, const Piece &piece);

} // namespace roundlay
