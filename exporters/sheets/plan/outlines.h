// What stands on the foundation beside the ring of walls, as rings of world millimetres.
#pragma once

#include "kernel/layout/layout.h"

#include <vector>

namespace roundlay::sheets {

/// A wall indoors, between the faces of the walls it stands against.
std::vector<Vec2> partition_corners(const WallPlace &wall);

/// Where logs of the first round run on past their corner, as under a lean-to: something has to carry them
/// there.
std::vector<std::vector<Vec2>> run_ons(const Layout &layout);

} // namespace roundlay::sheets
