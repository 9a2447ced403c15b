// Shells for tests: random ones of any plan, thickness, pitch, slope and openings, and a few plain ones.
#pragma once

#include "kernel/shell/shell.h"
#include "tests/support/parts.h"

#include <string>
#include <vector>

namespace roundlay::test {

/// Inside a rapidcheck property. Every number is drawn from rapidcheck, so failures shrink.
Shell any_shell();

/// The same with logs that taper from butt to tip, some with sizes of their own.
Shell any_tapered_shell();

/// The whole family: corners that are not square, partitions with tees and crossings, notches of single
/// corners and logs, overhangs of single ends, deep and proud shoulders, openings near corners, tapers. Some
/// cannot be built.
Shell any_family_shell();

/// Any of these with floors (tailed and square pockets, tapered joists, beams, openings with trimmers),
/// grooves for splines, sloping sills, draw-bores and stated bores. Some cannot be built.
Shell any_fitted_shell();

/// A rectangle of hewn logs with openings on a foundation with one step, in the middle of wall A or taking in
/// its right corner. Some cannot be built.
Shell any_stepped_shell();

/// Any shell of hewn logs whose sticks leave wane.
Shell any_waned_shell();

/// Any plan of round logs scoped over one another, with openings.
Shell any_saddle_shell();

/// The same on a foundation with one step, as any_stepped_shell.
Shell any_stepped_saddle_shell();

/// A rectangle of round logs: 5 m x 4 m, 240 mm thick, 5 rounds of 210 mm, ends 240 mm past the corners.
Shell round_shell();

/// A plan that is none of shapes.h: a rectangle with a bay of three walls on its south side, each turned by
/// `turn` degrees, or an eight-sided one. Both two-colour.
std::vector<Wall> bay_plan(Length width, Length depth, Length from_left, Length side, Length front,
                           double turn);
std::vector<Wall> octagon_plan(Length side);

/// A rectangle with nothing special about it: 5 m x 4 m, 200 mm thick, 4 rounds of 230 mm with a 20 mm gap.
Shell plain_shell();

/// That with a floor in it: the room is 4600 by 3600. Joists 100 x 180 with their tops at 560: their beds at
/// 380 lie in the second log of wall A (230 to 440) and the tops in the third (460 to 670).
Shell floored();

} // namespace roundlay::test
