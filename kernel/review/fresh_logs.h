// Fresh logs that come into old walls.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// A replacement dries and sinks alone where the logs around it are old and dry: by how much, with what lies
/// over it. Not where its wood is stated to be seasoned.
void review_fresh_logs(const Shell &shell, const Layout &layout, Findings &findings);

} // namespace roundlay
