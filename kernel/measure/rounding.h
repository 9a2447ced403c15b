// The one rounding of everything that is printed.
#pragma once

#include <cmath>
#include <cstdint>

namespace roundlay {

/// The nearest whole number of parts, halves up. `parts` >= 0 and under 2^53.
///
/// 11 31/32 in is not a double in millimetres: what is stored lies a hair under or over the tie at 1/16, and
/// which one is chance. So a value this close to a tie counts as the tie that the person meant. The band is
/// wider than the error of a few sums of lengths up to a kilometre, and far under anything that is measured.
inline std::uint64_t nearest_count(double parts) {
    constexpr double tie_band = 1e-9; // of one part
    return static_cast<std::uint64_t>(std::floor(parts + (0.5 + tie_band)));
}

} // namespace roundlay
