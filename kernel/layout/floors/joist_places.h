// Where the joists of a floor lie, from the left of its room.
#pragma once

#include "kernel/layout/floors/floor_bays.h"
#include "kernel/shell/shell.h"

#include <vector>

namespace roundlay {

/// Millimetres from the left of the room to the middle of a joist.
struct JoistPlaces {
    std::vector<double> places;   ///< from the left on
    std::vector<double> left_out; ///< of the rule, that would lie in a wall
};

/// Joists `beside` openings come first; those of the floor's rule keep clear of them and of walls.
JoistPlaces joist_places(const Floor &floor, double room_width, const FloorBays &bays,
                         const std::vector<double> &beside);

/// From the joist, or side of the room, before a place to the one behind it.
double room_about(double x, const std::vector<double> &places, double room_width);

} // namespace roundlay
