// Partitions: walls indoors that end in other walls, and the tees and crossings they make.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Appends partitions to layout.walls, tees and crossings to layout.corners; adds findings. False on an
/// error.
bool lay_out_partitions(const Shell &shell, Layout &layout);

} // namespace roundlay
