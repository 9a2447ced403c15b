// Levelling as a table: which log lies where, and how level each wall is after each round.
#pragma once

#include "exporters/lists/table.h"
#include "kernel/levelling/levelling.h"

namespace roundlay {

/// One row a place, by round, then wall: the log's mark, where its butt lies, its heights as cut, and the
/// error at both ends before and after.
Table level_table(const Layout &layout, UnitSystem units, const std::vector<PileLog> &pile,
                  const Levelled &levelled);

/// What was gained, in sentences of a line each: what is level, errors before and after, and what no
/// arrangement beats.
std::string level_words(const Levelled &levelled, UnitSystem units);

} // namespace roundlay
