// Places of the plan that its parts share.
#pragma once

#include "kernel/layout/layout.h"
#include "modeler/window/desk/desk.h"

namespace roundlay::window {

inline Vec2 flat(Vec3 p) {
    return {p.x, p.y};
}

inline const WallPlace &place(const Layout &layout, int wall) {
    return layout.walls[static_cast<std::size_t>(wall)];
}

/// Along the wall and inward of its outside face.
inline Vec2 on_wall(const WallPlace &w, double along, double inward) {
    return flat(w.frame.to_world({along, inward, 0}));
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
