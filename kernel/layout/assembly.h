// From what the stages have worked out to the whole layout.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/stages.h"

namespace roundlay {

/// Without findings. Better no shell than half a one: where a stage has found an error, there are no pieces.
/// What lies in the layout then is taken out of the stages; of those, advice asks for courses, slivers and
/// moves of floors.
Layout assembled(const Shell &shell, Stages &stages);

} // namespace roundlay
