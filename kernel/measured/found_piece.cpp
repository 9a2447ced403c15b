#include "kernel/measured/found_piece.h"

namespace roundlay {

const Piece *piece_at(const Layout &layout, const FoundPlace &place) {
    const Piece *found = nullptr;
    for (const Piece &piece : layout.pieces) {
        if (!is_log(piece) || layout.walls[piece.wall].name != place.wall || piece.round != place.round)
            continue;
        if (place.piece ? piece.number != *place.piece : found != nullptr) {
            if (!place.piece) return nullptr;
            continue;
        }
        found = &piece;
    }
    return found;
}

} // namespace roundlay
