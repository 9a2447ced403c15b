// What random shells are drawn from. Inside a rapidcheck property.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay::test {

/// Both are in.
double between(int low, int high);
bool sometimes(int one_in);

/// A kind of the tail family.
NotchKind any_tail(bool stated_too);

/// Up to three in each wall, apart from one another and from the corners.
void add_any_openings(Shell &shell);

/// Logs with a butt and a tip: thinner, and higher or lower, toward the tip; some with sizes of their own.
void add_any_taper(Shell &shell);

} // namespace roundlay::test
