// Volume, surface and centre of a border with round faces.
#pragma once

#include "kernel/boundary/boundary.h"
#include "kernel/boundary/measures.h"

namespace roundlay {

/// By sums along the edges of every face: over a plane or a cylinder the integrals wanted are integrals round
/// its border.
Measures round_measures_of(const Boundary &boundary);

/// A point of an edge at t in [0, 1], and by how much it moves with t.
struct EdgePoint {
    Vec3 at, by_t;
};
EdgePoint point_of(const Boundary &boundary, const BoundaryEdge &edge, double t);

} // namespace roundlay
