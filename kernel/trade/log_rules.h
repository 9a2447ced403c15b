// Board feet: of a stick, and of a log by the rules that buyers and sellers name.
//
// The rules estimate sawn boards, not hewn sticks, and differ from one another by design.
#pragma once

#include "kernel/measure/measure.h"

namespace roundlay {

/// One board foot is 144 cubic inches.
double board_feet(double volume_mm3);

/// (D - 4)^2 L / 16 with the small-end diameter inside the bark in inches and the length in feet; 0 below
/// 4 in. (Doyle's rule, from memory.)
double doyle(Length diameter, Length length);

/// (0.79 D^2 - 2 D - 4) L / 16, not rounded; 0 where that is negative. (The formula, seen; the printed
/// decimal tables differ.)
double scribner(Length diameter, Length length);

/// 0.905 (0.22 D^2 - 0.71 D) for each 4 ft, the diameter growing 1/2 in per 4 ft toward the butt, in all
/// to the nearest 5. A rest shorter than 4 ft counts in proportion. (As in a USDA program, seen.)
double international_quarter(Length diameter, Length length);

} // namespace roundlay
