// Where an opening would fit that is refused where it stands: tried before it is said.
#pragma once

#include "kernel/layout/advice/trial.h"
#include "kernel/layout/openings/openings.h"

namespace roundlay {

/// Puts behind each finding of an opening too near a corner, a partition or another opening the nearest
/// places to its left and its right where it brings no error and no warning to the whole shell, of
/// its pegs neither; else the nearest where it brings no error. A place is told only where there is one.
void advise_on_openings(const Shell &shell, Layout &layout, const LayOut &try_out);

} // namespace roundlay
