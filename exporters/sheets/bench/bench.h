// The bench set: every tail once, large; pieces that differ only in numbers as rows of one sheet.
#pragma once

#include "exporters/sheets/bench/family.h"
#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

/// Notes, tails by letter, families, plain pieces, then cut sheets of what has to have one of its own (old
/// logs and new wood let into them). Empty where there are no pieces. `only`: of the others nothing is told.
SheetSet bench_set(const Layout &layout, const OnlyPieces &only = {});

// Its parts.
/// Each cut of each joint in a row: where it begins and ends from the log's end (within a log from its
/// first side on the outside), its four heights from the level line, outside and inside, at the end and at
/// the shoulder, its bevels.
Table joint_table(const std::vector<Joint> &joints, const Words &words);
/// Which cuts it has, which way they slope and whether its end goes at a slant: joints of one sort look
/// alike.
std::string sort_of(const Joint &joint);
/// Empty where no joint is cut.
std::vector<Titled> tail_sheets(const Draft &draft, const std::vector<Joint> &joints, const Words &words);
Titled family_sheet(const Draft &draft, const Family &family, const Words &words);
/// Of all families in whose pieces nothing is cut but bores; without pages where there are none.
Titled plain_sheet(const Draft &draft, const std::vector<Family> &families, const Words &words);

} // namespace roundlay::sheets
