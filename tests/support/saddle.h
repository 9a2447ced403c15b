// A saddle over a log that is hewn flat, and what it takes by a sum on paper.
#pragma once

#include "kernel/layout/layout.h"

#include <cmath>

namespace roundlay::test {

constexpr double saddle_radius = 150, saddle_axis = 40; ///< over the foot of the log

/// Over the middle of a log of 2000 mm.
inline ScopeCut saddle_over_middle() {
    ScopeCut saddle;
    saddle.at = {1000, 0, saddle_axis};
    saddle.along = {0, 1, 0};
    saddle.radius = saddle_radius;
    return saddle;
}

/// What it takes of each millimetre across, between cheeks `half` to either side of its axis: over each point
/// the axis' height and the half circle's own.
inline double saddle_section(double half) {
    constexpr double r = saddle_radius;
    return 2 * half * saddle_axis + half * std::sqrt(r * r - half * half) + r * r * std::asin(half / r);
}

} // namespace roundlay::test
