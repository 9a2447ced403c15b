// Where a piece lies along its wall, and which new wood lies in a log.
#pragma once

#include "kernel/layout/piece.h"
#include "kernel/layout/walls.h"

#include <vector>

namespace roundlay {

/// In the wall's own x, from end to end of the piece's blank, mm.
struct AlongWall {
    double from = 0, to = 0;
};
inline AlongWall along_wall(const Indexed<WallPlace> &walls, const Piece &piece) {
    const double from = walls[piece.wall].frame.to_local(piece.frame.origin).x;
    return {from, from + piece.blank.length};
}

/// The new wood that mends that log, in the order of the pieces, where it lies behind its log.
inline std::vector<Index<Piece>> new_wood_in(const Indexed<Piece> &pieces, Index<Piece> log) {
    std::vector<Index<Piece>> all;
    for (const Index<Piece> i : pieces.after(log)) {
        if (pieces[i].mends != log) break;
        all.push_back(i);
    }
    return all;
}

} // namespace roundlay
