// Where a wall meets its corners, along the wall's own x.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

struct CornerReach {
    double prism_low = 0, prism_high = 0; ///< the crossing wall's two faces
    double shoulder = 0;                  ///< its near face
    double tip = 0;                       ///< end of the logs: far face, overhang included
};

/// overhang: how far ends run past the crossing wall's far face.
CornerReach reach_at(const Layout &layout, int wall, End end, double overhang);

/// The notch rule of a corner: its own, else the shell's.
NotchRule notch_at(const Shell &shell, const Layout &layout, int corner);

/// reach_at with the overhang of the corner's notch.
CornerReach full_reach_at(const Shell &shell, const Layout &layout, int wall, End end);

} // namespace roundlay
