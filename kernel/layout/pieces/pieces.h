// Pieces: each course cut by its openings, with blank, frame and cuts.
#pragma once

#include "kernel/layout/openings/openings.h"

namespace roundlay {

/// Where a piece lies in its wall, for what is worked out after it (pegs, neighbours).
struct PieceSpan {
    int piece = 0;                  ///< index into Layout::pieces
    Span span;                      ///< end to end, wall x
    double origin = 0;              ///< wall x of the piece frame's origin
    Span shoulders;                 ///< between shoulders and jambs
    const Course *course = nullptr; ///< the log it is part of
    bool corner_left = false, corner_right = false;
    bool locked_left = false, locked_right = false;
    std::vector<Span> taken_below, taken_above; ///< notches in its under and top face: of openings, and where
                                                ///< it runs on past a crossing wall
};

/// Pieces of one course, left to right.
using CourseSpans = std::vector<PieceSpan>;

/// Appends every piece to layout.pieces (bores and raise still missing). Result by wall, by course.
std::vector<std::vector<CourseSpans>> lay_out_pieces(const Shell &shell, Layout &layout,
                                                     const std::vector<std::vector<Course>> &courses,
                                                     const std::vector<WallNotches> &notches);

} // namespace roundlay
