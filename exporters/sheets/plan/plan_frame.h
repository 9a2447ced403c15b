// The plan of a shell on paper: where world points fall, and what the outline of its walls is.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/plan/wall_side.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Degrees by which words along that direction are turned, so that they read from below or from the right.
double reading_turn(Vec2 along);

/// Outside corners of the walls, counter-clockwise, world millimetres.
std::vector<Vec2> outside_corners(const Layout &layout);
/// Inside corners, each where the inside faces of its two walls meet.
std::vector<Vec2> inside_corners(const Layout &layout);

inline constexpr double off_wall = 9; ///< mm on paper, of a dimension line from the face that it is of

/// The dimension of one wall, off its outside face: two arrows and the number between them, no nearer than
/// `nearest`. False where the number found no free place.
bool add_wall_length(Board &board, Vec2 from, Vec2 to, const std::string &number, double lettering,
                     double nearest = off_wall);

/// A north arrow, since the world's y axis points north.
std::vector<Item> north_arrow(Vec2 foot);

} // namespace roundlay::sheets
