// Finds what a careful draughtsman would never leave on a sheet.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct Clash {
    enum class Kind {
        text_over_text,
        text_over_line,        ///< a line of any kind or a dark area's border runs through a text
        leader_through_leader, ///< which of them leads where cannot be told
        mark_beside_note,      ///< on one line and so near that they read as one
        text_off_frame,        ///< outside the frame or across it
        text_on_block,         ///< partly in the title block, partly outside
        line_off_sheet,
        too_small ///< lettering under 2.5 mm
    };
    Kind kind;
    std::string text;  ///< the words concerned
    std::string other; ///< the other words, or the kind of line
    Vec2 at;           ///< millimetres on paper
};

/// All clashes of a sheet; a right sheet has none. Texts whose boxes only touch do not clash.
std::vector<Clash> clashes(const Sheet &sheet);

std::string described(const Clash &clash);

/// Whether any part of the segment lies inside the rectangle (not only on its border).
bool crosses(const Rect &box, Vec2 from, Vec2 to);

/// Whether two segments run through one another; meeting at an end is not that.
bool run_through(Vec2 a, Vec2 b, Vec2 c, Vec2 d);

/// Where the segment is inside, as parts of its length. Only where it crosses.
std::pair<double, double> span_within(const Rect &box, Vec2 from, Vec2 to);

/// The straight strokes that an item draws; arcs in short chords. Fills, texts and links have none.
std::vector<std::pair<Vec2, Vec2>> strokes_of(const Item &item);

/// Calls run(from, to) for each stroke of the path, in order.
template <typename Run> void each_stroke(const Path &path, Run &&run) {
    for (std::size_t i = 1; i < path.points.size(); ++i)
        run(path.points[i - 1], path.points[i]);
    if (path.closed && path.points.size() > 2) run(path.points.back(), path.points.front());
}

} // namespace roundlay::sheets
