// Places of the plan that its parts share.
#pragma once

#include "kernel/layout/layout.h"
#include "modeler/window/desk/desk.h"

#include <vector>

namespace roundlay::window {

inline Vec2 flat(Vec3 p) {
    return {p.x, p.y};
}

inline const WallPlace &place(const Layout &layout, Index<WallPlace> wall) {
    return layout.walls[wall];
}

/// Along the wall and inward of its outside face.
inline Vec2 on_wall(const WallPlace &w, double along, double inward) {
    return flat(w.frame.to_world({along, inward, 0}));
}

/// A timber from above.
inline std::vector<Vec2> outline_of(const Piece &piece) {
    const double length = piece.blank.length, width = piece.blank.width;
    const auto at = [&](double x, double y) { return flat(piece.frame.to_world({x, y, 0})); };
    return {at(0, 0), at(length, 0), at(length, width), at(0, width)};
}

/// That is drawn, whether or not it can be built; null where there is nothing to draw.
inline const Layout *layout_of(const Desk &desk) {
    const StatePtr &state = desk.drawn();
    return state ? &state->drawn() : nullptr;
}

/// Of the same; only where there is one.
inline const Shell &shell_of(const Desk &desk) {
    return desk.drawn()->job.shell;
}

} // namespace roundlay::window
