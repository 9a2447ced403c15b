// Which edges of a piece are seen from a direction and which lie behind wood. In doubles, on the
// polyhedron itself: every edge is split where another face begins or ends to cover it.
#pragma once

#include "exporters/sheets/cut_sheet/view.h"
#include "kernel/geometry/polyhedron.h"
#include "kernel/layout/cuts/cut.h"

#include <vector>

namespace roundlay::sheets {

enum class Seen { visible, hidden };

/// A straight stretch of an edge on the projection plane, millimetres of wood.
struct Stretch {
    Vec2 from, to;
    Seen seen = Seen::visible;
    bool cut_off = false; ///< an edge of a face where a long log is broken, not an edge of the wood
};

/// What is drawn. Bores are seen through: where one opens, its face does not cover what is behind.
struct Scene {
    std::vector<Polyhedron> solids;
    std::vector<Bore> bores;
    bool rims = true;           ///< false where rims are drawn as true circles instead
    std::vector<double> breaks; ///< x of faces that exist only because a log is broken there
};

/// All edges, and the rims of the bores where wanted as 48 chords each. Stretches may lie over one another.
std::vector<Stretch> edges_seen(const Scene &scene, const Projection &projection);

/// Joins stretches that lie on one another or follow one another in a line; what is visible is not also
/// drawn hidden. Ordered by kind, then from left to right.
std::vector<Stretch> tidied(const std::vector<Stretch> &stretches);

} // namespace roundlay::sheets
