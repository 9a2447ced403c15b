// Do the tails at the corners hold the logs from pulling out?
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// A note for each corner whose tails do not lock, a warning where there are no pegs either; and the same for
/// each log that its own notch leaves loose at a corner that locks.
void check_locks(const Shell &shell, const Layout &layout, Findings &findings);

} // namespace roundlay
