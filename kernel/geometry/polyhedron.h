// A solid with plane faces, written down as vertices and face loops.
#pragma once

#include "kernel/geometry/plane.h"

#include <vector>

namespace roundlay {

/// One plane face. loops[0] is the outer border, counter-clockwise seen from outside the wood;
/// further loops are holes, clockwise. Indices into Polyhedron::vertices, first vertex not repeated.
struct Face {
    Plane plane;
    std::vector<std::vector<int>> loops;
};

/// Closed and two-manifold: every edge belongs to exactly two faces, once in each direction.
/// No vertex lies inside an edge, no face has zero area.
struct Polyhedron {
    std::vector<Vec3> vertices;
    std::vector<Face> faces;
};

double volume(const Polyhedron &solid);                 ///< mm3
Vec3 centroid(const Polyhedron &solid);                 ///< of a solid of even density
double area(const Polyhedron &solid, const Face &face); ///< mm2, holes taken off
Box3 bounds(const Polyhedron &solid);

/// True when every edge is used exactly once in each direction.
bool is_closed(const Polyhedron &solid);

} // namespace roundlay
