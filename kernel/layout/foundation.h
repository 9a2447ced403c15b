// What walls stand on.
#pragma once

#include "kernel/layout/walls.h"

#include <string>
#include <vector>

namespace roundlay {

/// Where a wall's foundation stands higher, and what it is called. Heights from the lowest foundation.
struct StepPlace {
    std::string name; ///< "step 1": in the order of Shell::steps
    Index<WallPlace> wall;
    double from = 0, to = 0; ///< wall x; past the overhanging ends where it takes in a corner
    double rise = 0;
    int number = 1; ///< in the order of Shell::steps
};

struct Foundation {
    std::vector<StepPlace> steps; ///< by wall, from left to right
};

} // namespace roundlay
