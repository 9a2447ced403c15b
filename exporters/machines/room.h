// The room that an operation leaves for a tool. Private to this room.
#pragma once

#include "exporters/machining/operation.h"

#include <optional>

namespace roundlay::machines {

/// The least that two of its sides which face one another are apart; infinite where none do, or where they
/// meet in a corner.
double narrowest_room(const machining::Operation &operation);

/// Which way the bar of a chain lies, so wide and thick, that comes in from there: along the log, across it
/// or upright; none where it does not go in.
std::optional<Vec3> bar_in(const machining::Operation &operation, LogFace from, double wide, double thick);

/// Of all that it takes: the area of its sides that are neither square to that way nor along it, mm2.
double sloped_area(const machining::Operation &operation, Vec3 way);

/// Of what it leaves across that way: the area of its bottom, mm2; 0 where it goes through.
double bottom_area(const machining::Operation &operation, Vec3 way);

/// "top face": for sentences.
const char *words_for(LogFace side);

} // namespace roundlay::machines
