// Pegs to make ready: one diameter, one length, cut to their bores as they are driven.
#pragma once

#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay {

struct PegRow {
    double diameter = 0;
    double length = 0;                  ///< rounded up to the step
    double shallowest = 0, deepest = 0; ///< of their bores, as the cut sheets say them
    std::vector<std::string> names;
};

/// Lengths are in steps of this: bores in logs that are not alike differ by a hair from place to place.
Length peg_step(UnitSystem units);

/// Thick and long first.
std::vector<PegRow> pegs_by_size(const Shell &shell, const Layout &layout);

} // namespace roundlay
