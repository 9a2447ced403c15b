// What the plan has where nobody has measured: numbers that a form prints small, as proposed.
#pragma once

#include "kernel/layout/layout.h"

#include <optional>
#include <vector>

namespace roundlay::sheets {

/// How an end meets the wall that crosses there.
enum class EndShape {
    tail,   ///< its top and under side are cut to the seams
    round,  ///< scribed over the round log below it: its notch follows that log
    square, ///< at an opening, a step, or against the crossing wall
};

/// Where a tail is measured on one face, in the piece's frame.
struct TailPlace {
    double x = 0, low = 0, high = 0;
    double tall() const { return high - low; }
};

struct ProposedTail {
    TailPlace shoulder_outside, shoulder_inside, end_outside, end_inside;
};

struct ProposedEnd {
    EndShape shape = EndShape::square;
    double height = 0, width = 0; ///< of the log at the shoulder, or where it ends
    std::optional<ProposedTail> tail;
    std::optional<double> overhang;
};

ProposedEnd proposed_end(const Layout &layout, const Piece &piece, End end);

/// Height and width of a log where another wall crosses it and it runs on.
ProposedEnd proposed_at(const Layout &layout, const Piece &piece, Index<CornerPlace> corner);

/// A jamb of an opening, where a log that runs on under or over it is measured.
struct JambPlace {
    std::size_t opening = 0; ///< of Shell::openings
    bool near_datum = true;  ///< which of its two jambs, along the log
    double at = 0;           ///< from the log's datum end
    double height = 0;       ///< of the log there
};

/// Of the openings that touch the log and that it does not end at.
std::vector<JambPlace> jamb_places(const Shell &shell, const Layout &layout, const Piece &piece);

/// Where its pegs stand, from its datum end.
std::vector<double> peg_places(const Layout &layout, Index<Piece> piece);

} // namespace roundlay::sheets
