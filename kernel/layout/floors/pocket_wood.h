// The wood that a log keeps over and under the pocket of a timber's end.
#pragma once

#include "kernel/layout/openings/openings.h"

#include <string>

namespace roundlay {

/// Where a log's top lies highest over a stretch of its wall.
double highest_over(const Course &course, const Span &taken);

/// What a log keeps under a bed over a stretch of its wall.
struct WoodUnder {
    double mm = 0;             ///< at its least
    bool over_opening = false; ///< it ends at an opening: what lies under the log carries nothing there
};
WoodUnder wood_under(const Shell &shell, const std::string &wall, const Course &course, const Span &taken,
                     double bed);

} // namespace roundlay
