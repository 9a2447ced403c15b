// The directions from which a piece is drawn. Third or first angle only decides where a view stands.
#pragma once

#include "exporters/sheets/drawing/words.h"
#include "kernel/geometry/vec.h"

namespace roundlay::sheets {

/// The four faces are seen as the log is rolled a quarter turn each time, so the datum end is always left.
/// Rolled over, the inside face shows its under edge uppermost.
enum class View { top, outside, under, inside, datum_end, far_end, isometric };

/// An orthographic projection: across and up on paper, toward the viewer. Right-handed, unit.
struct Projection {
    Vec3 across, up, toward;

    Vec2 flat(Vec3 p) const { return {dot(p, across), dot(p, up)}; }
    double depth(Vec3 p) const { return dot(p, toward); } ///< greater is nearer
};

/// In the piece frame. The isometric view (ISO 5456-3, from memory) shows the top, the outside face and the
/// datum end, and is drawn to the scale of its axes, so lengths along them may be taken off.
Projection projection_of(View view);

std::string name_of(View view, const Words &words); ///< "Top", "Outside", …

} // namespace roundlay::sheets
