// A floor that lies over the tops of the walls that should carry it.
#pragma once

#include "kernel/layout/heights.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <optional>

namespace roundlay {

struct OverTop {
    Finding finding;
    double by = 0; ///< down to where its joists lie on the lower wall's top; negative, as that is down
};

/// Nothing where its joists, as deep as they are, reach down into both walls, or where one of these is not
/// there: whatever else is wrong with the floor, this can be known.
std::optional<OverTop> over_top(const Shell &shell, const Plan &plan, const Heights &heights,
                                std::size_t floor);

} // namespace roundlay
