// Shells of a stated size for timing.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay::bench {

/// An L of 13 rounds with paired windows: about 160 pieces.
Shell house();

/// The same plan and openings in round logs with saddles.
Shell round_house();

/// A cross of 40 rounds with openings in every wall: about 1,000 pieces.
Shell hall();

} // namespace roundlay::bench
