// The plan: walls walked round the outside become places in the world, and corners between them.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Fills layout.walls (name, frame, length, thickness, corners) and layout.corners; adds findings. On an
/// error both stay empty. Any closed plan of right-angled corners that does not cross or touch itself.
void lay_out_plan(const Shell &shell, Layout &layout);

} // namespace roundlay
