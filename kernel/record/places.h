// What of a log is told by running dimensions along it, from its zero.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/record/found_log.h"

#include <optional>
#include <vector>

namespace roundlay {

/// "zones, pegs": the kinds of parts of the log whose place was taken, be it read or not. Nothing where there
/// are none.
std::optional<Said> parts_with_places(const FoundLog &log);

/// Places were taken along it, and nobody said from which corner: which end they are near is not known.
bool lacks_zero(const FoundLog &log);

} // namespace roundlay
