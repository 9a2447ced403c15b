// Faces of cells that lie on one another whole: most of what a plane has to add up.
#pragma once

#include "kernel/geometry/plane_arrangement.h"

namespace roundlay {

/// Without the polygons that lie face to face, corner on corner: they are no border. In their order.
std::vector<SignedPolygon> without_pairs(const std::vector<SignedPolygon> &polygons);

} // namespace roundlay
