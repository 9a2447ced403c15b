// The plane that is nearest to a tail's top where it was measured at three or four of its corners.
#pragma once

#include "kernel/geometry/vec.h"

#include <array>
#include <optional>

namespace roundlay {

/// Over the middle of the corner: a height, and what it rises by per unit of each of the two walls' own ways.
struct TailPlane {
    double middle = 0, along = 0, across = 0;
    double off = 0; ///< how far it lies from each of four heights that are in no plane
};

/// Heights over the corners of a notch, half of which is `along` long and `across` wide: [0] is back and on
/// the left, [1] back and on the right, [2] and [3] in front. Of three heights the plane through them;
/// nothing of fewer.
std::optional<TailPlane> tail_plane(const std::array<std::optional<double>, 4> &heights, double along,
                                    double across);

} // namespace roundlay
