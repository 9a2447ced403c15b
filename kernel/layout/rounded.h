// Lengths of advice, rounded to what a person reads off a rule and to the side on which the advice holds.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/shell/shell.h"

#include <algorithm>
#include <cmath>
#include <vector>

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

/// The lengths that a person would read off a rule in place of this one: the nearest, then that away from
/// nothing, then that toward it. What is tried is what is said, and nobody is told of parts that no one sets
/// out.
inline std::vector<Length> round_lengths(const Shell &shell, double mm) {
    const double down = rounded_down(shell, mm), up = rounded_up(shell, mm);
    const double nearest = mm - down < up - mm ? down : up;
    std::vector<Length> all;
    for (const double length : {nearest, mm < 0 ? down : up, mm < 0 ? up : down})
        if (std::ranges::find(all, Length::mm(length)) == all.end()) all.push_back(Length::mm(length));
    return all;
}

/// A length of advice that holds with that much and with more.
inline LengthAmount no_less(const Shell &shell, double mm) {
    return exactly_in_mm(rounded_up(shell, mm));
}

/// A length of advice that holds with that much and with less.
inline LengthAmount no_more(const Shell &shell, double mm) {
    return exactly_in_mm(rounded_down(shell, mm));
}

} // namespace roundlay
