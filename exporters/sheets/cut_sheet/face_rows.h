// Where each face stands on paper.
#pragma once

#include "exporters/sheets/cut_sheet/hidden_lines.h"
#include "exporters/sheets/cut_sheet/ruler.h"
#include "exporters/sheets/drawing/sheet.h"
#include "exporters/sheets/frame/title_block.h"
#include "kernel/layout/wood/body.h"

#include <vector>

namespace roundlay::sheets {

/// One face of the log: its blank's outline on paper, and how wood is mapped to it.
struct FaceRow {
    View view = View::top;
    Projection projection;
    double low = 0, high = 0; ///< of the blank, across the log in this view, millimetres of wood
    Rect outline;             ///< of the blank on paper
    double scale = 0;

    double y(Vec3 p) const { return outline.y0 + (dot(p, projection.up) - low) * scale; }
    /// Paper height of a level over the under face; for the outside and inside faces.
    double level(double z) const { return y({0, 0, z}); }
    bool rolled_over() const { return view == View::inside; }
};

FaceRow row_for(View view, const Blank &blank, double scale);

/// Top, outside, under, inside from above in third angle; under, outside, top, inside in first angle.
std::vector<View> order_of_faces(Angle angle);

/// What is seen of one face, millimetres of wood: worked out once, drawn at any scale.
struct FaceLines {
    std::vector<Stretch> edges;
    std::vector<Stretch> blank; ///< the blank's outline where the wood no longer reaches it
};

FaceLines face_lines(View view, const Body &body, const Blank &blank);

/// The lines on paper, cut where the ruler leaves wood out.
std::vector<Path> edges_of(const FaceRow &row, const FaceLines &lines, const Ruler &ruler);

/// Two thin lines with a zigzag (ISO 128-2, from memory) at each place where the log is broken, and one at an
/// end where it goes on over another sheet.
std::vector<Path> break_lines(const FaceRow &row, const Ruler &ruler, bool comes_from, bool goes_on);

} // namespace roundlay::sheets
