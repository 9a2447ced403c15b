// Where rain goes at the corners, and which notch would keep it out.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// A warning for each wall's tails at a corner that lead water to an inside face. The notch that it advises
/// was tried there: it leads none in, and the shell laid out with it has no more findings than before.
void check_water(const Shell &shell, const Layout &layout, Findings &findings);

/// A notch of its own for each corner that leads water in, where one was found that does not.
std::vector<CornerNotch> dry_corners(const Shell &shell, const Layout &layout);

} // namespace roundlay
