// Steps of the foundation: where a wall stands higher, and what that takes from each of its logs.
#pragma once

#include "kernel/layout/courses/courses.h"

namespace roundlay {

/// Less wood than this beside a step, or over it, splits off. Common practice, no source.
inline constexpr double least_beside_step = 100, least_over_step = 50;

/// Fills layout.steps from Shell::steps; adds findings, false on an error. Plan and courses must be laid out.
bool lay_out_steps(const Shell &shell, Layout &layout);

/// The step that a wall's notch with another one stands on; none where it stands on the lowest foundation.
const StepPlace *step_at(const Layout &layout, int wall, std::size_t meeting);

/// True where a course is left out over a step: nothing, or not everywhere something, of it lies higher.
bool leaves_out(const StepPlace &step, const Course &course);

/// Steps that reach up into a course of a wall or leave it out, from left to right.
std::vector<const StepPlace *> steps_under(const Layout &layout, int wall, const Course &course);

/// The height of the foundation under the whole of a stretch of a wall: of its lowest part.
double floor_under(const Layout &layout, int wall, double from, double to);

/// Logs that hang over a step, and logs of which a step leaves little.
void warn_of_steps(Layout &layout, const std::vector<std::vector<Course>> &courses);

} // namespace roundlay
