// Lengths of advice, rounded to what a person reads off a rule and to the side on which the advice holds.
#pragma once

#include "kernel/shell/shell.h"

#include <cmath>

namespace roundlay {

/// What lengths are printed to, mm.
inline double finest_printed(const Shell &shell) {
    return shell.units == UnitSystem::imperial ? 25.4 / 16 : 1.0;
}

inline double rounded_up(const Shell &shell, double mm) {
    constexpr double same = 1e-6; // of a part: figures that are whole but for their last digits
    const double part = finest_printed(shell);
    return std::ceil(mm / part - same) * part;
}

inline double rounded_down(const Shell &shell, double mm) {
    return -rounded_up(shell, -mm);
}

} // namespace roundlay
