// How a face and an upright line lie to each other, seen from above.
#pragma once

#include "kernel/geometry/polyhedron.h"

namespace roundlay {

double distance_to_segment(Vec2 p, Vec2 a, Vec2 b);

struct PlanPlace {
    bool inside = false;
    double to_border = 0; ///< mm, to the nearest place of the border
};

PlanPlace place_in_plan(const Polyhedron &hewn, const Face &face, Vec2 p);

} // namespace roundlay
