#include "kernel/measured/found_piece.h"

namespace roundlay {

std::vector<Index<Piece>> pieces_at(const Layout &layout, const FoundPlace &place) {
    std::vector<Index<Piece>> found;
    for (const Index<Piece> i : layout.pieces.indices()) {
        const Piece &piece = layout.pieces[i];
        if (!place.timber.empty()) {
            if (piece.timber && piece.tag == place.timber) found.push_back(i);
            continue;
        }
        if (is_log(piece) && layout.walls[piece.wall].name == place.wall && piece.round == place.round &&
            (!place.piece || piece.number == *place.piece))
            found.push_back(i);
    }
    return found;
}

const Piece *piece_at(const Layout &layout, const FoundPlace &place) {
    const auto found = pieces_at(layout, place);
    return found.size() == 1 ? &layout.pieces[found.front()] : nullptr;
}

} // namespace roundlay
