// Where walls meet, as each of them sees it; whether they have room; which start with a full log.
#pragma once

#include "kernel/layout/found.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// Sine of the least angle between two walls that meet. Sharper tails are slivers of short grain, flatter
/// ones would run far along the other log. Common practice, no source.
inline constexpr double least_sine_between_walls = 0.5 - 1e-9; ///< 30 degrees, with room for rounding

/// Unit vector of a heading. Whole quarter turns come out exact, so that right-angled plans have no rounding
/// in them.
Vec2 heading_vector(double degrees);

/// Fills WallPlace::meetings, start_corner and end_corner from plan.corners. False where two notches of a
/// wall leave no wood between them, or a partition meets a wall past its end.
bool note_meetings(const Shell &shell, Found<Plan> &plan);

/// Walls that do not meet keep clear of one another, their overhanging ends included.
bool check_room_between(const Shell &shell, Found<Plan> &plan);

/// Of two walls that meet one starts with a full log, the other with a half one. Refuses plans where that
/// cannot be round every loop, naming the corner.
bool choose_starts(const Shell &shell, Found<Plan> &plan);

} // namespace roundlay
