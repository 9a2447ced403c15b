// Measures as a person would write them down, such that they read back to the very same number.
#pragma once

#include "kernel/measure/measure.h"

namespace roundlay {

/// A text that a person could have typed: `16 ft`, `8 2/3 in`, `10 ft 10 in`, `220.5 mm`. Units are words,
/// not marks, so that the text can stand in quotes. The chosen system is used where it is exact and the other
/// one is not much shorter. What can be typed reads back to exactly this length; what was worked out (sums,
/// drags) to within 1e-6 mm: `5 ft 8 in`, not `1727.1999999999998 mm`. The length is one that parse_length
/// can return.
std::string spell_length(Length value, UnitSystem system);

/// A text that parse_slope reads back to this slope, within 1e-10: `1:8`, `7 deg`, `0.31`, `level`.
std::string spell_slope(Slope value);

/// The shortest decimal that reads back to the same double, never with an exponent.
std::string spell_number(double value);

} // namespace roundlay
