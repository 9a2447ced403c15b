// How logs fall into pieces: where they are cut in two, and what is left between.
#pragma once

#include "kernel/layout/corners/corners.h"
#include "kernel/layout/openings/openings.h"

namespace roundlay {

/// Where a log is cut in two: by an opening, by a wall that it is too thin to run on past, or by the
/// foundation where it stands higher than the log.
struct Break {
    Span span;
    const OpeningCut *opening = nullptr;
    std::size_t meeting = 0; ///< of the wall, where there is neither opening nor step
    const StepPlace *first_step = nullptr, *last_step = nullptr; ///< that its two ends are at
};

/// What is left of a log, and between which breaks; none at the log's own ends.
struct Stretch {
    Span span;
    const Break *left = nullptr, *right = nullptr;
};

/// From left to right. A break that reaches over an end of the log leaves nothing beyond it.
std::vector<Stretch> stretches_between(const Span &log, const std::vector<Break> &breaks);

/// How a log falls into pieces.
struct CourseParts {
    std::vector<OpeningCut> cuts;
    std::vector<Break> breaks; ///< point into `cuts`
};

/// Of each wall by course: worked out once, since logs ask for their neighbours' tags.
using AllParts = Indexed<std::vector<CourseParts>, WallPlace>;

AllParts parts_of(const Shell &shell, const Plan &plan, const Foundation &foundation, const Courses &courses,
                  const Corners &corners);

} // namespace roundlay
