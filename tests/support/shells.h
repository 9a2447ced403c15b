// Random shells for property tests: any plan, thickness, pitch, slope and openings that can be built.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay::test {

/// Inside a rapidcheck property. Every number is drawn from rapidcheck, so failures shrink.
Shell any_shell();

/// The same with logs that taper from butt to tip, some with sizes of their own.
Shell any_tapered_shell();

/// A rectangle with nothing special about it: 5 m x 4 m, 200 mm thick, 4 rounds of 230 mm with a 20 mm gap.
Shell plain_shell();

} // namespace roundlay::test
