// Running dimensions along a wall of any direction on a plan.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/dimension.h"

#include <optional>
#include <vector>

namespace roundlay::sheets {

/// From the wall's left outside corner `from` toward `to`, outside it: `marks` ascending, each so far from
/// that corner on paper; the origin is added. How far they reach from the wall; nothing, and nothing is
/// added, where they would run into one another or into what is there.
std::optional<double> add_wall_marks(Board &board, Vec2 from, Vec2 to, const std::vector<Mark> &marks,
                                     double lettering);

} // namespace roundlay::sheets
