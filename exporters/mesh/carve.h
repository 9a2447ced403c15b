// Bores that are not clear of each other, of slopes and of borders, cut as any other cut. Private to this
// room.
#pragma once

#include "kernel/layout/wood/body.h"

#include <array>
#include <vector>

namespace roundlay {

/// The body with a prism taken out for each bore: its hewn border then holds them, and it has no bores left.
Body carved(const Body &body, int sides);

/// The edges of a carved border, without those that only part two sides of one prism.
std::vector<std::array<int, 2>> edges_round_bores(const Polyhedron &hewn, const std::vector<Bore> &bores,
                                                  int sides);

} // namespace roundlay
