// Where a beam of a floor would fit that is refused where it lies: tried before it is said.
#pragma once

#include "kernel/layout/advice/trial.h"

namespace roundlay {

/// Puts behind each refusal of a floor's beam that says no more the nearest places to either side at which
/// the shell is laid out with fewer errors, and none of that floor. A place is told only where there is one.
void advise_on_beams(const Shell &shell, Layout &layout, const LayOut &try_out);

} // namespace roundlay
