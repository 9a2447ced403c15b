// Levelling as a table: which log lies where, and how level each wall is after each round.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/voice.h"
#include "kernel/levelling/levelling.h"

namespace roundlay {

/// One row a place, by round, then wall: the log's mark, where its butt lies, its heights as cut, and the
/// error at both ends before and after.
Table level_table(const Layout &layout, const Speech &speech, const std::vector<PileLog> &pile,
                  const Levelled &levelled);

/// What was gained, in sentences of a line each: what is level, errors before and after, what no arrangement
/// beats, and how high the shell then stands beside what its rounds say. `standing` is the layout with these
/// logs.
std::string level_words(const Levelled &levelled, const Layout &standing, const Speech &speech);

/// The same as one row of numbers, for machines.
Table level_summary(const Levelled &levelled, const Layout &standing);

} // namespace roundlay
