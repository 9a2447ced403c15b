// Plans that are changed as a whole: what else must follow when one wall moves.
#pragma once

#include "kernel/shell/shell.h"

#include <optional>

namespace roundlay {

/// The shell with one wall moved outward (negative: inward). The two walls it meets grow or shrink, so that
/// the plan stays closed; openings, partitions and bores stay where they stand in the world. Nothing where a
/// neighbour is not square to the wall or would have no length left.
std::optional<Shell> wall_moved(const Shell &shell, std::size_t wall, Length outward);

/// The shell with a wall's outside face made so long by moving the wall after it. Nothing as for wall_moved.
std::optional<Shell> wall_lengthened(const Shell &shell, std::size_t wall, Length length);

} // namespace roundlay
