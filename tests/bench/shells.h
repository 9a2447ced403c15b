// Shells of a stated size for timing.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay::bench {

/// An L of 13 rounds with paired windows: about 160 pieces.
Shell house();

/// A small rectangle of round logs with saddles: some twenty pieces, since booleans take their time.
Shell round_house();

/// Eleven rounds of round logs with saddles, a door and a window: 59 pieces.
Shell cabin();

/// A cross of 40 rounds with openings in every wall: about 1,000 pieces.
Shell hall();

} // namespace roundlay::bench
