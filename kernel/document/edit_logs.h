// Logs of a document, stated all at once: from a measured record, or as a levelling chose them.
#pragma once

#include "kernel/document/edit.h"

namespace roundlay {

/// States each log: in the [[log]] that stands there for its wall and round, else in a new one. What a log
/// does not state (no mark, no width) stays as it stands. Lengths are written in `units`, exactly.
Document::Edited with_logs(const Document &document, const std::vector<OwnLog> &logs, UnitSystem units);

} // namespace roundlay
