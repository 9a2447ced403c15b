// Bores.
#pragma once

#include "kernel/layout/index.h"
#include "kernel/shell/kinds.h"

#include <optional>

namespace roundlay {

struct Peg;

/// An upright round hole for a peg, or one that a person placed.
struct Bore {
    double x = 0, y = 0;         ///< centre line
    double z_from = 0, z_to = 0; ///< the wood bored, z_from < z_to; at a blank's face the bore is open there
    double diameter = 0;
    std::optional<Index<Peg>> peg = std::nullopt; ///< that it is for
    bool from_top = true;                         ///< which face it is bored from
    bool through = true;
    std::optional<BoreUse> use = std::nullopt; ///< what a person stated it for; none: a peg's
};

} // namespace roundlay
