// Partitions: walls indoors that end in other walls, and the tees and crossings they make.
#pragma once

#include "kernel/layout/found.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// Appends partitions to plan.walls, tees and crossings to plan.corners; adds findings. False on an
/// error.
bool lay_out_partitions(const Shell &shell, Found<Plan> &plan);

} // namespace roundlay
