// How weights are printed: one rounding for lists, sheets and the window.
#pragma once

#include <cmath>

namespace roundlay {

inline constexpr double kg_per_pound = 0.45359237; // exact by definition (international pound, 1959)

/// What is shown is a whole unit, from 50 on one of five: finer would claim a certainty that no estimate has.
inline double shown_weight_step(double in_unit) {
    constexpr double fine_below = 50, coarse = 5;
    return in_unit < fine_below ? 1 : coarse;
}

/// The lower end of a range is shown rounded down and the upper one up, so that what is shown holds the
/// range.
inline double shown_low_weight(double in_unit) {
    constexpr double noise = 1e-9;
    const double step = shown_weight_step(in_unit);
    return std::floor(in_unit / step + noise) * step;
}

inline double shown_high_weight(double in_unit) {
    constexpr double noise = 1e-9;
    const double step = shown_weight_step(in_unit);
    return std::ceil(in_unit / step - noise) * step;
}

} // namespace roundlay
