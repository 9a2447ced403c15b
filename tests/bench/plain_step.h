// The plain way of writing STEP: one compound through the library's plain writer.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/solid/solid.h"

#include <vector>

namespace roundlay::bench {

/// solids: one per piece, in piece frames. Returns the size of the file.
std::size_t write_plain_step(const Layout &layout, const std::vector<Solid> &solids);

} // namespace roundlay::bench
