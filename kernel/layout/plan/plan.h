// The plan: walls walked round the outside become places in the world, and corners between them.
#pragma once

#include "kernel/layout/found.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// On an error there are neither walls nor corners. Any closed plan that does not cross or touch itself, with
/// corners between 30 and 150 degrees, whose walls and partitions two-colour.
Found<Plan> lay_out_plan(const Shell &shell);

} // namespace roundlay
