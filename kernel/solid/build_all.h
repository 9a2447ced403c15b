// All solids of a layout, each model built once.
#pragma once

#include "kernel/layout/wood/interference.h" // bodies_of
#include "kernel/solid/solid.h"

#include <vector>

namespace roundlay {

/// One solid per body, in the same order and the same whatever the number of threads. Throws what `build`
/// throws for the first body that cannot be built.
std::vector<BuiltSolid> build_all(const std::vector<Body> &bodies, int threads = 2);

/// One solid per entry of Layout::models. Throws std::runtime_error naming the piece when one cannot be
/// built.
std::vector<BuiltSolid> build_all(const Layout &layout, int threads = 2);

} // namespace roundlay
