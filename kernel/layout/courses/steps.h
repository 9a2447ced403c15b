// Steps of the foundation: where a wall stands higher, and what that takes from each of its logs.
#pragma once

#include "kernel/layout/courses/courses.h"
#include "kernel/layout/foundation.h"

namespace roundlay {

/// Less wood than this beside a step, or over it, splits off. Common practice, no source.
inline constexpr double least_beside_step = 100, least_over_step = 50;

/// The steps of Shell::steps; `heights` are those of all walls.
Found<Foundation> lay_out_steps(const Shell &shell, const Plan &plan, const Heights &heights);

/// The step that a wall's notch with another one stands on; none where it stands on the lowest foundation.
const StepPlace *step_at(const Plan &plan, const Foundation &foundation, Index<WallPlace> wall,
                         std::size_t meeting);

/// True where a course is left out over a step: nothing, or not everywhere something, of it lies higher.
bool leaves_out(const StepPlace &step, const Course &course);

/// Steps that reach up into a course of a wall or leave it out, from left to right.
std::vector<const StepPlace *> steps_under(const Foundation &foundation, Index<WallPlace> wall,
                                           const Course &course);

/// The height of the foundation under the whole of a stretch of a wall: of its lowest part.
double floor_under(const Foundation &foundation, Index<WallPlace> wall, double from, double to);

/// Logs that hang over a step, and logs of which a step leaves little.
Findings warn_of_steps(const Shell &shell, const Plan &plan, const Foundation &foundation,
                       const Courses &courses);

} // namespace roundlay
