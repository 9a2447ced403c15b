// Taking down and raising, step by step.
#pragma once

#include "exporters/lists/cut_list.h"
#include "exporters/lists/table.h"
#include "kernel/stock/taking_down.h"

namespace roundlay {

/// One row for each piece, the last that was raised first: pegs to draw, how far it must rise before it is
/// free, what it weighs, what is held by nothing but its pegs then.
Table down_table(const CutList &list, const Layout &layout, const std::vector<DownStep> &steps);

/// The same from the end: what it is laid on, pegs to drive, what it weighs, and room to tick it off.
Table raising_table(const CutList &list, const Layout &layout);

} // namespace roundlay
