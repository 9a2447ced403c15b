// Two states of one house, piece by piece.
#pragma once

#include "kernel/layout/layout.h"

#include <optional>
#include <vector>

namespace roundlay {

enum class PieceChange {
    unchanged, ///< the same wood in the same place of its wall
    added,
    gone,
    longer,
    shorter,
    recut,  ///< as long, of another section or with other cuts
    moved,  ///< the same wood in another place
    retold, ///< the same wood in the same place; finish, old or new, mark or note differ
};

struct ComparedPiece {
    PieceChange what = PieceChange::unchanged;
    std::optional<Index<Piece>> before = {},
                                after = {}; ///< in the first and the second layout; one of them at least
    double longer = 0;                      ///< mm, of what is ordered, 0 under 1 mm; under 0 it is shorter
    bool section = false;                   ///< its height or width differs
    bool new_wood = false;    ///< old wood before, kept or patched, and new wood in its place after
    double along = 0, up = 0; ///< mm, how far it lies from where it lay, along its wall and upward; 0 where
                              ///< it came to another wall
    /// Pieces of the other layout that lie where it does: what a new one was cut from, or what took the place
    /// of one that is gone.
    std::vector<Index<Piece>> where = {};
};

/// Every piece of either layout once. A piece is first held against the one of the same wall, round and
/// number (its tag), for a log that keeps its place is the same log; what is left over on both sides and is
/// of the same wood is one that moved. Order: by the second layout, then what is gone by the first.
std::vector<ComparedPiece> compared(const Layout &before, const Layout &after);

} // namespace roundlay
