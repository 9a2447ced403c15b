// One length at the front of a text, exactly. What parse_length and parse_slope are made of.
#pragma once

#include "kernel/measure/number_reader.h"

namespace roundlay {

/// Reads a signed length and stops behind its unit. Exact, in millimetres.
Measured<Rational> read_length(NumberReader &reader);

inline constexpr const char *length_expected = "a length such as 8 1/2 in, 7'-6\" or 215 mm";

} // namespace roundlay
