// The curve in which a bore leaves a plane: a circle, or an ellipse where the plane is not level.
#pragma once

#include "kernel/boundary/boundary.h"

namespace roundlay {

/// centre + cos(t) * semi_major * major + sin(t) * semi_minor * minor, minor = normal x major. Runs
/// counter-clockwise seen from above; the bore's angle 0 is at t = start, -pi/2 <= start <= pi/2.
struct Rim {
    Vec3 centre;
    Vec3 normal{0, 0, 1}; ///< of the plane, upward
    Vec3 major{1, 0, 0};  ///< unit, along the steepest rise or fall; along x where the plane is level
    double semi_major = 0, semi_minor = 0;
    double start = 0;
    bool level = true;
};

Rim rim_of(const BoundaryBore &bore, bool upper);

} // namespace roundlay
