// The plan: walls walked round the outside become places in the world, and corners between them.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Fills layout.walls (name, frame, length, thickness, meetings, which start full) and layout.corners; adds
/// findings. On an error both stay empty. Any closed plan that does not cross or touch itself, with corners
/// between 30 and 150 degrees, whose walls and partitions two-colour.
void lay_out_plan(const Shell &shell, Layout &layout);

} // namespace roundlay
