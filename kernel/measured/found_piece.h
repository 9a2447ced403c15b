// Which piece of a layout a log was found as.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/record/found_log.h"

namespace roundlay {

/// Null where the layout has none there, or several and the place does not say which.
const Piece *piece_at(const Layout &layout, const FoundPlace &place);

} // namespace roundlay
