// How far the wood of one log differs between two states of a house.
#pragma once

#include "kernel/layout/piece.h"

#include <optional>

namespace roundlay {

/// mm, how much more the second has. Heights and widths are of the faces as hewn, at the datum end and the
/// far end; a shoulder is told by how far it lies from its own end.
struct WoodDifference {
    double length = 0;
    double height_datum = 0, height_far = 0;
    double width_datum = 0, width_far = 0;
    double shoulder_datum = 0, shoulder_far = 0;
    /// The most that a place or a size of any of its cuts but bores differs by, without sign. Nothing where
    /// cuts came or went.
    std::optional<double> cuts;

    /// The most of all of them, without sign.
    double most() const;
};

WoodDifference wood_difference(const Piece &was, const Piece &is);

} // namespace roundlay
