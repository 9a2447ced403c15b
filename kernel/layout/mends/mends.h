// Mended logs: what stays of each, and the new wood that comes into it.
#pragma once

#include "kernel/layout/found.h"
#include "kernel/layout/piece.h"
#include "kernel/layout/walls.h"

#include <vector>

namespace roundlay {

struct MendedPieces {
    Indexed<Piece> pieces; ///< in the order of those before, new wood behind the log that it comes into
    Indexed<Index<Piece>, Piece> now; ///< of each piece before: where it lies now
};

/// `pieces`: all that a shell is built of, with all joints and bores. What a mend cannot be is an error; its
/// log is left whole then. Tags of neighbours are told anew where a joint has come into new wood.
Found<MendedPieces> mend(const Shell &shell, const Plan &plan, Indexed<Piece> pieces);

} // namespace roundlay
