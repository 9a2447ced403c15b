// Which piece of a layout a log was found as.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/record/found_log.h"

#include <vector>

namespace roundlay {

/// Every log of the layout that lies there, or the timber that it is; several where the place does not say
/// which of those that openings part its round into.
std::vector<Index<Piece>> pieces_at(const Layout &layout, const FoundPlace &place);
/// The only one; null where the layout has none there, or several.
const Piece *piece_at(const Layout &layout, const FoundPlace &place);

} // namespace roundlay
