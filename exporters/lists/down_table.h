// Taking down and raising, step by step.
#pragma once

#include "exporters/lists/cut_list.h"
#include "exporters/lists/table.h"
#include "kernel/progress/ticked.h"
#include "kernel/stock/taking_down.h"

namespace roundlay {

/// One row for each piece, the last that was raised first: pegs to draw, how far it must rise before it is
/// free, what it weighs, what is held by nothing but its pegs then; what is down already, and what may come
/// next. Logs that are recorded as missing are left out.
Table down_table(const CutList &list, const Layout &layout, const Site &site,
                 const std::vector<DownStep> &steps);

/// The same from the end: what it is laid on, pegs to drive, what it weighs, what is done of it already, and
/// whether it may go up.
Table raising_table(const CutList &list, const Layout &layout, const Site &site);

} // namespace roundlay
