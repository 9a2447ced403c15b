// Logs of a house that nobody recorded.
#pragma once

#include "kernel/fabric/fabric.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

/// Tags of the logs of the layout in whose place no found log is recorded. Of walls alone.
std::vector<std::string> unrecorded_logs(const Record &record, const Layout &layout);

/// Those that `now`, a state that tells of old wood, shows as new wood where nobody stated any: they are
/// ordered. Told once.
std::optional<DecisionProblem> unrecorded_and_ordered(const Record &record, const Layout &now);

} // namespace roundlay
