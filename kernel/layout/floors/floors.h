// Floors: joists, beams and trimmers, and the pockets for their ends.
#pragma once

#include "kernel/layout/pieces/pieces.h"
#include "kernel/layout/timber.h"

namespace roundlay {

/// What one end of a timber asks of its floor's level. Others may ask otherwise: see floor_advice.h.
struct FloorMove {
    std::size_t finding = 0; ///< index into the findings of whoever tells of it
    std::size_t floor = 0;
    double by = 0; ///< up; negative: down
};

struct Floors {
    Indexed<FloorPlace> floors;            ///< in the order of Shell::floors
    Indexed<Timber> timbers;               ///< by floor: beams, joists from the left, trimmers
    std::vector<Piece> pieces;             ///< of the timbers: they are counted on from the logs' last piece
    std::vector<CutIn<PocketCut>> pockets; ///< in the logs that carry them
    AllSpans
        spans; ///< of the logs, with what pockets take: later cuts keep clear of that; none without floors
    std::vector<FloorMove> moves; ///< of the findings that the level is to blame for
};

/// Places every floor. On an error a timber cannot be placed.
Found<Floors> lay_out_floors(const Shell &shell, const Plan &plan, const Heights &heights,
                             const Pieces &logs);

/// What can be said of floors before there are logs.
Findings check_floor_plans(const Shell &shell, const Plan &plan);

} // namespace roundlay
