// All solids of a layout, each model built once.
#pragma once

#include "kernel/solid/solid.h"

#include <vector>

namespace roundlay {

/// One solid per body, in the same order whatever the number of threads. Throws std::runtime_error naming
/// the piece when one cannot be built.
std::vector<BuiltSolid> build_all(const std::vector<Body> &bodies, int threads = 2);

/// Both in one: one solid per entry of Layout::models.
std::vector<BuiltSolid> build_all(const Layout &layout, int threads = 2);

} // namespace roundlay
