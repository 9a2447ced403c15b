// Rounds: how many, how high, and where every log of every wall lies in height.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// One log of a wall right through, before openings cut it.
struct Course {
    int round = 1;
    LogKind kind = LogKind::full;
    double low = 0, high = 0; ///< its under and top face, from the foundation
    double centre = 0;        ///< of the whole log; of a half log: where the sawn-off half would have its centre
};

/// Works out count, pitch and height, fills the walls' heights, and gives each wall's courses from the sill up.
/// Walls must be placed. On an error the result is empty.
std::vector<std::vector<Course>> lay_out_courses(const Shell &shell, Layout &layout);

} // namespace roundlay
