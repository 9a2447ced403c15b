// Pieces: each course cut by its openings, with blank, frame and cuts.
#pragma once

#include "kernel/layout/openings/openings.h"

namespace roundlay {

/// Where a piece lies in its wall, for what is worked out after it (pegs, neighbours).
struct PieceSpan {
    Index<Piece> piece;
    Span span;         ///< end to end, wall x
    double origin = 0; ///< wall x of the piece frame's origin
    Span shoulders;    ///< between shoulders and jambs
    Course course;     ///< the log it is part of
    bool corner_left = false, corner_right = false;
    bool locked_left = false, locked_right = false;
    std::vector<Span> taken_below, taken_above; ///< notches in its under and top face: of openings, and where
                                                ///< it runs on past a crossing wall
};

/// Pieces of one course, left to right.
using CourseSpans = std::vector<PieceSpan>;

/// Of each wall by course.
using AllSpans = Indexed<std::vector<CourseSpans>, WallPlace>;

struct Pieces {
    Indexed<Piece> pieces; ///< by wall, round, number
    AllSpans spans;
};

/// A cut that is made in a piece once it is there.
template <typename Kind> struct CutIn {
    Index<Piece> piece;
    Kind cut;
};

/// Every log cut into pieces by corners, openings and steps, each of which must stand.
Found<Pieces> lay_out_pieces(const Shell &shell, const Plan &plan, const Foundation &foundation,
                             const Courses &courses, const Corners &corners);

} // namespace roundlay
