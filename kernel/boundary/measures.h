// Volume, surface and centre of what a border encloses.
#pragma once

#include "kernel/geometry/vec.h"

namespace roundlay {

struct Boundary;

struct Measures {
    double volume = 0; ///< mm3
    double area = 0;   ///< mm2, of the whole surface
    Vec3 centroid;     ///< of even density
};

/// In closed form, relative error some 1e-15; with round surfaces by sums along the edges, some 1e-10.
Measures measures_of(const Boundary &boundary);

} // namespace roundlay
