// Where a partition that meets no wall as it is stated would meet one.
#pragma once

#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// Of findings about a partition's place or the wall it ends in, the advice becomes from where to where along
/// its first wall it fits, or the walls that it reaches from where it starts: each tried by laying the plan
/// out. Of one too near another notch it is told where none is too near. Where nothing holds it stays as it
/// is.
void advise_on_partitions(const Shell &shell, Findings &findings);

} // namespace roundlay
