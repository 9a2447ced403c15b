// Where a plane cuts a scene's wood.
#pragma once

#include "exporters/picture/scene.h"
#include "kernel/geometry/plane.h"

namespace roundlay {

/// The outlines of the cut through everything visible: pairs of world points, one pair per line. Together
/// they close round every cut piece. A face that lies in the plane gives no lines of its own.
std::vector<std::array<Vec3, 2>> section_outline(const Scene &scene, const Plane &plane);

} // namespace roundlay
