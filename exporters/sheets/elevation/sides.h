// From which side a wall is seen, in words.
#pragma once

#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/layout.h"

namespace roundlay::sheets {

/// "Wall A, from outside, 1:20"; of a partition "Wall P, from the north, 1:20".
std::string wall_seen(const Layout &layout, Index<WallPlace> wall, bool outside, const std::string &scale,
                      const Words &words);

/// "seen from outside"; of a partition "seen from the north".
std::string seen_from(const Layout &layout, Index<WallPlace> wall, bool outside, const Words &words);

/// "elevations from outside and inside"; of a partition "elevations from the north and the south".
std::string seen_from_both(const Layout &layout, Index<WallPlace> wall, const Words &words);

} // namespace roundlay::sheets
