// Many convex polygons in one plane, some with the wood below and some with the wood above: what is border
// and what lies inside the wood.
#pragma once

#include "kernel/geometry/vec.h"

#include <vector>

namespace roundlay {

/// A convex polygon in the plane, counter-clockwise. sign +1: the wood lies behind the plane (the polygon
/// faces along the plane's normal); -1: the wood lies in front.
struct SignedPolygon {
    std::vector<int> ring; ///< indices into the points
    int sign = 1;
};

/// A region of the plane that is border: loops[0] outer, further loops holes.
struct BorderRegion {
    std::vector<std::vector<int>> loops; ///< outer counter-clockwise in the plane, holes clockwise
    int sign = 1;                        ///< which way it faces
};

/// Adds up the polygons: where a +1 and a -1 lie on one another the wood goes on and there is no border.
/// `points` are the plane's points in its own 2D axes, no two of them in one place; points where edges cross
/// are appended. A ring without area adds nothing to the others; alone it comes back as it is.
std::vector<BorderRegion> add_up(std::vector<Vec2> &points, const std::vector<SignedPolygon> &polygons);

} // namespace roundlay
