// Where logs and parts of them lie on the face of their wall.
#pragma once

#include "kernel/layout/layout.h"

#include <vector>

namespace roundlay::sheets {

/// From where to where, in the wall's own x.
struct Along {
    double from = 0, to = 0;
    bool empty() const { return to <= from; }
};
Along both(const Along &a, const Along &b);

/// What a piece takes of its wall.
Along along_of(const Layout &layout, const Piece &piece);

/// Of the log's height, from its underside: 0 to 1.
struct Band {
    double low = 0, high = 1;
};

/// The log's face within these limits as four corners in the wall's x and z, before it is notched. Empty
/// where the limits leave none of it.
std::vector<Vec2> face_outline(const Layout &layout, const Piece &piece, const Along &limits,
                               const Band &band = {});

} // namespace roundlay::sheets
