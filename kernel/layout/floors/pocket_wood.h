// The wood that a log keeps over, under and beside the pocket of a timber's end.
#pragma once

#include "kernel/layout/openings/openings.h"
#include "kernel/layout/pieces/pieces.h"

#include <string>
#include <vector>

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

/// The piece of a course that lies over the whole of a stretch; null where none does.
PieceSpan *span_over(CourseSpans &course, const Span &taken);

/// The wall whose notches a stretch of another would lie in.
std::optional<Index<WallPlace>> notches_at(const WallPlace &wall, const Span &taken);

/// What a log keeps to the side of a pocket where that is least: up to its own end, or a wall's notches.
struct WoodBeside {
    double mm = 0;
    std::optional<Index<WallPlace>> notch_of = std::nullopt; ///< that wall
};
WoodBeside wood_beside(const WallPlace &wall, const Span &log, const Span &taken);

/// The log of a wall that a timber's underside lies in or on, from `low` to `high` over its end; the wall's
/// first log there, and the highest under it.
struct Bearer {
    std::optional<std::size_t> course; ///< of the wall; none where no log lies there
    const Course *first = nullptr, *below = nullptr;
};
Bearer bearer_of(const std::vector<CourseSpans> &courses, const Span &taken, double low, double high);

} // namespace roundlay
