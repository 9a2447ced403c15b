#include "modeler/window/desk/selection.h"

#include <algorithm>

namespace roundlay::window {

namespace {

template <typename T> bool has(const Indexed<T> &all, const std::string &name) {
    return std::any_of(all.begin(), all.end(), [&](const T &t) { return t.name == name; });
}

bool is_there(const Chosen &c, const Shell &shell, const Layout &layout) {
    switch (c.kind) {
    case Chosen::Kind::nothing:
        return true;
    case Chosen::Kind::wall:
        return has(layout.walls, c.name);
    case Chosen::Kind::corner:
        return has(layout.corners, c.name);
    case Chosen::Kind::opening:
        return c.opening >= 0 && c.opening < static_cast<int>(shell.openings.size());
    case Chosen::Kind::piece:
        break;
    }
    return layout.pieces.empty() || piece_tagged(layout, c.name); // they come back when it stands again
}

} // namespace

std::optional<Index<Piece>> piece_tagged(const Layout &layout, const std::string &tag) {
    for (const auto i : layout.pieces.indices())
        if (layout.pieces[i].tag == tag) return i;
    return std::nullopt;
}

void Selection::set(Chosen chosen) {
    chosen_ = std::move(chosen);
    emit changed();
}

void Selection::choose_wall(const std::string &name) {
    wall_ = name;
    set({Chosen::Kind::wall, name, -1});
}

void Selection::choose_corner(const std::string &name) {
    corner_ = name;
    set({Chosen::Kind::corner, name, -1});
}

void Selection::choose_opening(const Shell &shell, int opening) {
    wall_ = shell.openings[static_cast<std::size_t>(opening)].wall;
    set({Chosen::Kind::opening, {}, opening});
}

void Selection::choose_piece(const Layout &layout, Index<Piece> piece) {
    const Piece &p = layout.pieces[piece];
    wall_ = layout.walls[p.wall].name;
    if (has(layout.corners, p.datum.at) && !p.timber)
        corner_ = p.datum.at;
    else if (has(layout.corners, p.far.at) && !p.timber)
        corner_ = p.far.at;
    set({Chosen::Kind::piece, p.tag, -1});
}

void Selection::hold_to(const Shell &shell, const Layout &layout) {
    const std::string wall = wall_, corner = corner_;
    if (!has(layout.walls, wall_)) wall_ = shell.walls.empty() ? std::string() : shell.walls.front().name;
    if (!has(layout.corners, corner_))
        corner_ = layout.corners.empty() ? std::string() : layout.corners.front().name;
    if (!is_there(chosen_, shell, layout))
        clear();
    else if (wall != wall_ || corner != corner_)
        emit changed();
}

} // namespace roundlay::window
