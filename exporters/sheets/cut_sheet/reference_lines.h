// The chalk lines that come before the first cut. Heights are measured from the level line, lengths with the
// tape held to the end line: none of them from wood that is hewn away or not there.
#pragma once

#include "kernel/layout/pieces/hewn_faces.h"

#include <optional>

namespace roundlay::sheets {

struct Features;

/// How the level line runs through the log.
enum class LevelRuns {
    level,     ///< level as the log lies, at a round height over the bed line
    axis,      ///< through the heart of a round stick, from end to end
    in_between ///< of a log that lies or narrows too much for a level one: midway of its top and its under
               ///< face
};

struct LevelLine {
    LevelRuns runs = LevelRuns::level;
    HewnFace at; ///< piece frame: how high it lies along the log
    bool slopes() const { return at.tapers(); }
};

/// Of the log before it is notched. Hewn logs: a level line at half the blank's height rounded to 10 mm or
/// half an inch, where that leaves a quarter of the wood on both sides of it; common practice, no source, but
/// for the choice of the height, which is ours.
LevelLine level_line_of(const HewnFaces &faces, UnitSystem units);

/// Where the end line is struck square round the log, millimetres from the datum end: 500 mm or 20 in where
/// that is clear of all that is cut, else at another round length. Nothing where the log has no such place.
std::optional<double> end_line_of(const Features &features, UnitSystem units);

} // namespace roundlay::sheets
