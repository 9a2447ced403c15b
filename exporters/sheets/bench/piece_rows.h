// The table of a family: a row for each piece.
#pragma once

#include "exporters/sheets/bench/family.h"
#include "exporters/sheets/drawing/table.h"

namespace roundlay::sheets {

/// Tag, its numbers by letter, openings, bores by kind, level line on the pole, raise, weight, what is to be
/// known.
Table piece_rows(const Draft &draft, const Family &family, const Words &words);

/// The table in as many as are needed for none to be wider than that: each has the first column, which says
/// whose the row is.
std::vector<Table> in_parts(const Table &table, double width);

/// What is to be done, in its order, with letters for the numbers in that table.
Table work_rows(const Family &family, const Words &words);

} // namespace roundlay::sheets
