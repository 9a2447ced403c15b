// What walls cover, seen from above.
#pragma once

#include "kernel/geometry/vec.h"
#include "modeler/window/desk/state.h"

#include <vector>

namespace roundlay::window {

/// By Layout::walls: the outline of all logs of the wall together, their ends past the corners included.
/// Empty where nothing is cut for it.
Indexed<std::vector<Vec2>, WallPlace> footprints(const State &state);

} // namespace roundlay::window
