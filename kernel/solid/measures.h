// Volume, surface and centre of a solid, from either of its forms.
#pragma once

#include "kernel/solid/boundary.h"
#include "kernel/solid/solid.h"

namespace roundlay {

struct Measures {
    double volume = 0; ///< mm3
    double area = 0;   ///< mm2, of the whole surface
    Vec3 centroid;     ///< of a solid of even density
};

/// In closed form, relative error some 1e-15; with round surfaces by sums along the edges, some 1e-10.
Measures measures_of(const Boundary &boundary);

/// By the library's integration over all faces.
Measures measures_of(const Solid &solid);

} // namespace roundlay
