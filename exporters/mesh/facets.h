// The border of a piece as plane faces alone, whole and with holes: for formats that know no round ones, and
// keep plane faces better than triangles do.
#pragma once

#include "exporters/mesh/mesh.h"
#include "kernel/layout/wood/body.h"

namespace roundlay {

/// Of plane faces and of round surfaces' flats as they are; a bore is a prism that takes as much wood as the
/// bore does, so that its corners lie a little outside its circle. Millimetres, piece frame. Of a body
/// without round surfaces whose bores are clear the volume is exact. `sides`: of a prism, 3 to 360, or
/// std::invalid_argument is thrown.
Polyhedron facets_of(const Body &body, int sides);

/// The same as triangles.
Mesh triangles_of(const Body &body, int sides);

/// How far these faces lie from the surfaces that they stand for, at most, mm; 0 where all are plane.
double facets_off(const Body &body, int sides);

} // namespace roundlay
