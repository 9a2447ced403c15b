// Round logs: what of the stick a log is made of shows in its section, and whether logs can be scoped over
// one another.
#pragma once

#include "kernel/layout/courses/courses.h"

#include <optional>

namespace roundlay {

/// Is the shell one of round logs, each scoped over those it lies on?
bool is_scoped(const Shell &shell);

/// Gives courses their wane, and scoped ones how far they reach over and under their seams. Sizes are those
/// stated for each log.
void give_round(Course &course, const LogSizes &sizes, const Shell &shell, double thickness);

/// The stick that a piece is hewn from, where its blank is not wholly within it.
std::optional<RoundCut> wane_of(const WallPlace &place, const Course &course, const Piece &piece);

/// Errors where sticks are too thin, or logs are not as even as scopes ask for.
Findings check_round_logs(const Shell &shell, const Plan &plan, const Courses &courses);

/// Of all walls, across: a pitch above it leaves logs floating.
double thinnest_stick(const Courses &courses);

} // namespace roundlay
