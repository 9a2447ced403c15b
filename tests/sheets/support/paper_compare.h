// Holds a piece against what its paper says of it, cut by cut.
#pragma once

#include "kernel/layout/layout.h"

#include <string>

namespace roundlay::test {

/// What differs by more than the paper can say, one phrase a cut; empty where nothing does. `half_digit`:
/// half of the last digit that is printed, millimetres.
std::string differences(const Piece &piece, const Piece &read, double half_digit);

} // namespace roundlay::test
