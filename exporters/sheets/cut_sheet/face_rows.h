// Where each face stands on paper.
#pragma once

#include "exporters/sheets/cut_sheet/face_views.h"
#include "exporters/sheets/cut_sheet/hidden_lines.h"

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

/// The row's edges on paper, cut where the ruler leaves wood out, with the blank's own outline where the
/// wood no longer reaches it.
std::vector<Path> edges_of(const FaceRow &row, const Body &body, const Blank &blank, const Ruler &ruler);

/// Two narrow lines with a zigzag (ISO 128-2) at each place where the log is broken.
std::vector<Path> break_lines(const FaceRow &row, const Ruler &ruler);

} // namespace roundlay::sheets
