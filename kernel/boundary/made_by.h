// Which cut made each face of a piece: for files in which a shop looks at a face and asks what it is.
#pragma once

#include "kernel/boundary/boundary.h"
#include "kernel/boundary/cut_sides.h"
#include "kernel/boundary/surfaces.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace roundlay {

struct MadeBy {
    std::optional<std::size_t> cut; ///< index into Piece::cuts; none: no cut reaches it, it is the blank's
    FacePart part = FacePart::top;
};

/// One for each of Boundary::faces. `border`: of that piece's body, piece frame.
std::vector<MadeBy> made_by(const Piece &piece, const Boundary &border);

/// A face of a solid that has no border in doubles.
struct FaceSeen {
    Surface surface; ///< a plane outward, or an even cylinder
    Vec3 outside;    ///< a place some 0.01 mm out of the wood, over the face
};

MadeBy made_by(const Piece &piece, const FaceSeen &face);

} // namespace roundlay
