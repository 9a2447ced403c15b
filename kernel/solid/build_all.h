// All solids of a layout, each model built once.
#pragma once

#include "kernel/layout/wood/interference.h" // bodies_of
#include "kernel/solid/solid.h"

namespace roundlay {

/// One for each of Layout::models.
using BuiltSolids = Indexed<BuiltSolid, Model>;

/// One solid per body, in the same order and the same whatever the number of threads. Throws what `build`
/// throws for the first body that cannot be built.
BuiltSolids build_all(const Bodies &bodies, int threads = 2);

/// One solid per entry of Layout::models. Throws std::runtime_error naming the piece when one cannot be
/// built.
BuiltSolids build_all(const Layout &layout, int threads = 2);

} // namespace roundlay
