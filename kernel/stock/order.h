// Sticks to order: pieces that come out of one section and one length.
#pragma once

#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay {

struct OrderRow {
    double width = 0, height = 0;
    double length = 0;      ///< rounded up to the step
    double least_round = 0; ///< least small-end diameter, straight and under the bark
    double blank_low_kg = 0, blank_high_kg = 0, log_low_kg = 0, log_high_kg = 0; ///< as Lifted, of one
    std::string species;                                                         ///< as `species_of`
    bool green = true; ///< weighed so: no moisture is stated, or it comes into an old house
    std::vector<std::string> tags;
};

/// Lengths are ordered in steps of this, so that the list stays short; width and height as they are printed,
/// rounded up. No trim is added.
Length order_step(UnitSystem units);

/// By section, long first, of each species by itself; of new wood alone.
std::vector<OrderRow> sticks_to_order(const Shell &shell, const Layout &layout);

} // namespace roundlay
