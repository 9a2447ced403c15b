// A hole in a floor, for stairs or a chimney.
#pragma once

namespace roundlay {

/// In the floor's frame.
struct Hole {
    double left = 0, right = 0, near = 0, away = 0;
    bool joist_left = true, joist_right = true; ///< else the room's own side is its edge
    bool trims_near = true, trims_away = true;  ///< else the wall is
};

} // namespace roundlay
