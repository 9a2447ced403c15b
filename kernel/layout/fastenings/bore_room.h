// How much wood bores leave beside them, whether for pegs or as a person places them.
#pragma once

#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

/// With less than this beside it a bore breaks out as it is bored. Common practice, no source.
inline constexpr double least_beside_bore = 10;

inline Said leaves_no_wood(double diameter, double thickness) {
    return said("a bore of %1 leaves no wood beside it in a wall %2 thick", in_mm(diameter),
                in_mm(thickness));
}

inline Said bores_half_away(double diameter, double thickness) {
    return said("a bore of %1 takes more than half of a wall %2 thick: what is left beside it splits easily",
                in_mm(diameter), in_mm(thickness));
}

} // namespace roundlay
