// How far a tool is tilted at least so that it lies on all faces of an operation together.
#pragma once

#include "exporters/machining/operation.h"
#include "kernel/geometry/cell.h"

namespace roundlay::machining {

/// Degrees off the way in, `way` out of the wood, for a round tool with a square end. It lies on each face,
/// with its end or with its flank, right up to every inner edge of that face: along an edge, or square to it.
/// What its radius keeps in corners, and corners sharper than a right angle, is no matter of the tilt. Never
/// less than is needed; 90 where no such tool lies on one of them without cutting into another. `taken`:
/// cell_taken.
double least_tilt(const Operation &operation, const Cell &taken, Vec3 way);

} // namespace roundlay::machining
