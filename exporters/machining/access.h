// From which sides a straight tool reaches an operation, and the inner corners that it meets there.
#pragma once

#include "exporters/machining/operation.h"
#include "kernel/geometry/cell.h"

namespace roundlay::machining {

/// Fills in access, corners, and whether a slot is a pocket. `stock`: cell_of.
void find_access(Operation &operation, const Cell &stock);

/// Least radius of the inner corners that run along the tool: 0 where there is one, for solids are sharp
/// there; of a round surface its own; none where no corner runs that way.
std::optional<double> inside_radius(const Operation &operation, LogFace from);

} // namespace roundlay::machining
