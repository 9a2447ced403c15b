// Plans to begin with: the walk round the outside of common shapes.
#pragma once

#include "kernel/shell/shell.h"

#include <vector>

namespace roundlay {

/// A shell without walls, its rules in round figures of that system: pegs of 1 1/4 in for 32 mm, and so on.
Shell begun_in(UnitSystem system);

/// Walls A, B, C … counter-clockwise from the south-west corner, the first running east. All sizes are over
/// the outside faces and must be positive; part sizes smaller than the whole. What is
/// left of a side comes out as 64ths of an inch or thousandths of a millimetre where it is one to 1e-6 mm.
std::vector<Wall> rectangle_plan(Length width, Length depth);

/// A rectangle less its north-east corner: `wing` is what stays of the north side, `leg` of the east side.
std::vector<Wall> l_plan(Length width, Length depth, Length wing, Length leg);

/// A rectangle with a recess in its south side, `from_left` from the south-west corner (an inset porch).
std::vector<Wall> inset_plan(Length width, Length depth, Length from_left, Length recess_width,
                             Length recess_depth);

/// Two wings to the north of a base: a recess in the north side.
std::vector<Wall> u_plan(Length width, Length depth, Length from_left, Length court_width,
                         Length court_depth);

/// A base with a wing standing out to the north, `from_left` from the north-west corner.
std::vector<Wall> t_plan(Length width, Length depth, Length from_left, Length wing_width, Length wing_depth);

/// A middle of `width` x `depth` with an arm standing out by `arm` from the whole of each side.
std::vector<Wall> cross_plan(Length width, Length depth, Length arm);

} // namespace roundlay
