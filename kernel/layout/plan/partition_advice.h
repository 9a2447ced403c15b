// Where a partition that meets no wall as it is stated would meet one.
#pragma once

#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <functional>

namespace roundlay {

/// `holds` tells whether the plan of a shell, partitions and all, can be laid out. Of findings about a
/// partition's place or the wall it ends in, the advice becomes from where to where along its first wall it
/// fits, or the walls that it reaches from where it starts: each tried. Where nothing holds it stays as it
/// is.
void advise_on_partitions(const Shell &shell, Findings &findings,
                          const std::function<bool(const Shell &)> &holds);

} // namespace roundlay
