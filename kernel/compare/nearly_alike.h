// When two states of a house have the same: to what nobody can saw.
#pragma once

#include "kernel/layout/cuts/numbers.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

/// Measuring by small steps leaves as much between two states. Numbers up to 1 are ways and slopes, which
/// tell more than a length does.
inline bool nearly_alike(const CutNumbers &a, const CutNumbers &b) {
    constexpr double of_lengths = 0.02, of_ways = 1e-4;
    return a.kinds == b.kinds &&
           std::equal(a.numbers.begin(), a.numbers.end(), b.numbers.begin(), b.numbers.end(),
                      [](double x, double y) {
                          return std::abs(x - y) <=
                                 (std::max(std::abs(x), std::abs(y)) <= 1 ? of_ways : of_lengths);
                      });
}

} // namespace roundlay
