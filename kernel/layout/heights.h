// How high a shell and its walls are.
#pragma once

#include "kernel/layout/index.h"

namespace roundlay {

struct WallPlace;

/// Of one wall: its own where it states them, else the shell's.
struct WallHeights {
    double pitch = 0;
    double log_height = 0;
    double top = 0; ///< top of its last log
};

struct Heights {
    double height = 0; ///< count * pitch
    int rounds = 0;
    double pitch = 0;
    Indexed<WallHeights, WallPlace> heights; ///< by wall; empty where they cannot be worked out
};

} // namespace roundlay
