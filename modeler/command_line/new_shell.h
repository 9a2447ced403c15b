// A shell from a shape and a few sizes, to begin with.
#pragma once

#include "kernel/shell/shell.h"

#include <string>

namespace roundlay {

/// What was typed; empty = not stated.
struct NewShellWords {
    std::string name, shape = "rectangle", units, species;
    std::string width, depth, wing, leg, from_left, part_width, part_depth, arm;
    std::string thickness, rounds, height, pitch, gap;
    std::string notch, slope, overhang;
};

/// Throws UsageError with a sentence for what does not fit.
Shell new_shell(const NewShellWords &words);

} // namespace roundlay
