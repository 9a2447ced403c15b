// How weights are printed: one rounding for lists, sheets and the window.
#pragma once

#include <cmath>

namespace roundlay {

inline constexpr double kg_per_pound = 0.45359237; // exact by definition (international pound, 1959)

/// Up to the next whole unit, from 50 on to the next five: finer would claim a certainty that no estimate has.
inline double shown_weight(double in_unit) {
    constexpr double noise = 1e-9, fine_below = 50, coarse = 5;
    const double step = in_unit < fine_below ? 1 : coarse;
    return std::ceil(in_unit / step - noise) * step;
}

} // namespace roundlay
