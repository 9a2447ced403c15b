// What a cut sheet says of the lines that are snapped before anything is cut, and of what is measured from
// where.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"

#include <string>

namespace roundlay::sheets {

/// Level line, end line where there is one, and the plumb line on the ends.
Table snap_table(const Features &features, const Words &words);

/// What lengths, heights and distances across are measured from.
std::string reading_words(const Features &features, const Words &words);

/// Which end is the datum end, and how the faces are drawn: the same for all logs, and for all timbers.
std::string faces_words(bool timber, const Words &words);

/// How high the level line of that piece comes over the zero of the story poles: two numbers where it runs at
/// a slant. `features` are those of its model.
std::string line_on_pole(const Features &features, const Piece &piece, const Words &words);

} // namespace roundlay::sheets
