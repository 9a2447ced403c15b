// How much wood bores leave beside them, whether for pegs or as a person places them.
#pragma once

#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

/// With less than this beside it a bore breaks out as it is bored. Common practice, no source.
inline constexpr double least_beside_bore = 10;

inline std::string leaves_no_wood(const Shell &shell, double diameter, double thickness, double most) {
    return "a bore of " + say(shell, diameter) + " leaves no wood beside it in a wall " + say(shell, thickness) + " thick; " +
           say(shell, std::max(0.0, most)) + " at most";
}

inline std::string bores_half_away(const Shell &shell, double diameter, double thickness) {
    return "a bore of " + say(shell, diameter) + " takes more than half of a wall " + say(shell, thickness) +
           " thick: what is left beside it splits easily";
}

} // namespace roundlay
