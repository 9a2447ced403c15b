// Numbers as files want them: a point, no exponent, no trailing zeros, whatever the locale.
#pragma once

#include <string>

namespace roundlay::sheets {

/// At most `decimals` digits after the point. "-0" is "0". Throws std::invalid_argument for NaN and infinity.
std::string number_text(double value, int decimals = 3);

} // namespace roundlay::sheets
