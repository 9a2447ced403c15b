// Rods, bolts, wiring and holes as found: what a person placed, log by log.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/speech.h"
#include "kernel/layout/layout.h"

namespace roundlay {

/// One row for each log that a stated bore goes through, from its lowest up: which one, what for, where in
/// the log, and where over the ground.
Table bore_table(const Shell &shell, const Layout &layout, Language language = Language::english);

} // namespace roundlay
