// What was measured in a house, as statements about the logs of a shell.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/levelling/pile.h"

namespace roundlay {

struct Recorded {
    std::vector<OwnLog> logs; ///< empty where there is a problem
    std::vector<int> lines;   ///< of the CSV that each of them comes from
    std::vector<CsvProblem> problems;
};

/// Rows without a piece state the whole log of a round. Of logs that openings part, the first one's left end
/// and the last one's right end are those of the round, whose log the model takes for straight; mark, note,
/// bow, finish and fabric are of each piece alone. Problems: walls, rounds and pieces that the shell does not
/// have, logs wider than their wall, heights of logs that are scoped over one another.
Recorded recorded(const Shell &shell, const std::vector<RecordedLog> &rows);

/// Where a log beside an opening was measured to be other than the straight line from end to end has it, by
/// more than hewn logs are measured to. `layout` is that of the shell with the recorded logs.
std::vector<CsvProblem> off_the_line(const Shell &shell, const Layout &layout,
                                     const std::vector<RecordedLog> &rows);

} // namespace roundlay
