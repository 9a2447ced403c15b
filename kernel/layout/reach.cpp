#include "kernel/layout/reach.h"

namespace roundlay {

CornerReach reach_at(const Layout &layout, int wall, End end, double overhang) {
    const WallPlace &w = layout.walls[static_cast<std::size_t>(wall)];
    const int corner = end == End::datum ? w.start_corner : w.end_corner;
    const CornerPlace &c = layout.corners[static_cast<std::size_t>(corner)];
    const int other = end == End::datum ? c.ends : c.starts;
    const double t = layout.walls[static_cast<std::size_t>(other)].thickness;
    // At an outside corner the crossing wall lies within the wall's length, at an inside corner past it.
    const double near_vertex = end == End::datum ? (c.reentrant ? -t : 0) : (c.reentrant ? w.length : w.length - t);
    CornerReach r{near_vertex, near_vertex + t, 0, 0};
    r.shoulder = end == End::datum ? r.prism_high : r.prism_low;
    r.tip = end == End::datum ? r.prism_low - overhang : r.prism_high + overhang;
    return r;
}

NotchRule notch_at(const Shell &shell, const Layout &layout, int corner) {
    const CornerPlace &c = layout.corners[static_cast<std::size_t>(corner)];
    const std::string &a = shell.walls[static_cast<std::size_t>(c.ends)].name;
    const std::string &b = shell.walls[static_cast<std::size_t>(c.starts)].name;
    for (const CornerNotch &own : shell.corners)
        if ((own.first == a && own.second == b) || (own.first == b && own.second == a)) return own.notch;
    return shell.notch;
}

CornerReach full_reach_at(const Shell &shell, const Layout &layout, int wall, End end) {
    const WallPlace &w = layout.walls[static_cast<std::size_t>(wall)];
    const int corner = end == End::datum ? w.start_corner : w.end_corner;
    return reach_at(layout, wall, end, notch_at(shell, layout, corner).overhang.mm());
}

} // namespace roundlay
