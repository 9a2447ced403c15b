// Bores as prisms: where their corners lie, and which faces they open in. Private to this room.
#pragma once

#include "kernel/layout/wood/body.h"

#include <optional>
#include <vector>

namespace roundlay {

struct BoreRing {
    std::vector<Vec3> corners;       ///< on the bore's circle, counter-clockwise from above
    std::optional<std::size_t> face; ///< that it opens in, and lies in; none: it ends blind, and level
};

struct BoreRings {
    BoreRing low, high;
};

/// Of a bore of a body whose bores are clear.
BoreRings rings_of(const Polyhedron &hewn, const Bore &bore, int sides);

} // namespace roundlay
