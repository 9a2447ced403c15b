// Does a border lie within the wood it is said to be of?
#pragma once

#include "kernel/boundary/boundary.h"

namespace roundlay {

/// True where no edge runs out of the stick, out of what the plane cuts leave, or into what is scoped out. A
/// border that was read off flats can do so where the exact surfaces cut one another otherwise than the
/// flats.
bool lies_within_wood(const Boundary &boundary, const Body &body);

} // namespace roundlay
