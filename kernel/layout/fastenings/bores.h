// Bores that a person placed: bolts, hold-down rods, ways for wiring, holes found in old wood.
#pragma once

#include "kernel/layout/pieces/pieces.h"

namespace roundlay {

struct Bores {
    std::vector<CutIn<Bore>> bores; ///< in the order of Shell::bores, each from its lowest log up
};

/// Each stated bore in the logs that it goes through. `spans` are those of the logs with all that was cut
/// from them before. On an error one misses its logs.
Found<Bores> lay_out_bores(const Shell &shell, const Plan &plan, const Foundation &foundation,
                           const Pieces &logs, const AllSpans &spans);

/// What can be said of stated bores before there are logs.
Findings check_bores(const Shell &shell, const Plan &plan);

} // namespace roundlay
