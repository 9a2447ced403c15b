#include "kernel/fabric/standing.h"

#include "kernel/layout/piece_places.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr double hair = 1; // mm: what laying out anew may move an end by

/// Where nobody says what wood the house was found of, only what is said to be replaced is new.
bool is_of_old_wood(const Piece &was, const Piece &is) {
    return is_old_wood(was) ? is_old_wood(is) : is.fabric != Fabric::replacement;
}

bool outgrows(const Piece &was, const AlongWall &old, const AlongWall &now) {
    const bool left = was.datum.kind == EndKind::jamb && now.from < old.from - hair;
    const bool right = was.far.kind == EndKind::jamb && now.to > old.to + hair;
    return left || right;
}

/// A floor's timber keeps its tag while its floor is stated alike.
std::vector<Index<Piece>> standing_timber(const Piece &was, const Layout &now) {
    for (const Index<Piece> i : now.pieces.indices())
        if (const Piece &is = now.pieces[i]; is.timber && is.tag == was.tag && is_of_old_wood(was, is))
            return {i};
    return {};
}

} // namespace

bool tells_of_old_wood(const Layout &state) {
    return std::ranges::any_of(state.pieces, [](const Piece &piece) {
        return is_log(piece) && (piece.fabric != Fabric::newly_cut || !piece.mended.empty());
    });
}

std::vector<Index<Piece>> standing_as(const Layout &found, Index<Piece> piece, const Layout &now) {
    const Piece &was = found.pieces[piece];
    if (was.timber) return standing_timber(was, now);
    const AlongWall old = along_wall(found.walls, was);
    std::vector<Index<Piece>> standing;
    for (const Index<Piece> i : now.pieces.indices()) {
        const Piece &is = now.pieces[i];
        if (!is_log(is) || is.round != was.round || now.walls[is.wall].name != found.walls[was.wall].name)
            continue;
        const AlongWall along = along_wall(now.walls, is);
        const double shared = std::min(old.to, along.to) - std::max(old.from, along.from);
        if (shared > hair && is_of_old_wood(was, is) && !outgrows(was, old, along)) standing.push_back(i);
    }
    return standing;
}

} // namespace roundlay
