// Where pegs are bored through a wall as it goes up.
#pragma once

#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/layout.h"

namespace roundlay::sheets {

/// Round by round from below up: running dimensions of the pegs through that round's logs from the wall's
/// left outside corner, and how deep their bores go from the top of those logs. Without rows where the logs
/// are bored at the bench or the wall has no pegs.
Table pegs_in_place(const Shell &shell, const Layout &layout, Index<WallPlace> wall, const Words &words);

} // namespace roundlay::sheets
