// Plans: the logs of each round from above, and the ground the shell stands on.
#pragma once

#include "exporters/sheets/frame/options.h"

#include <vector>

namespace roundlay::sheets {

/// One plan for each round: logs with their tags, an arrow from butt to tip, pegs, walls' lengths.
/// `bodies` are those of Layout::models.
std::vector<Sheet> round_plans(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                               const SheetOptions &options);

/// Where the walls stand on the foundation: outlines, corners from one origin in both directions, and the
/// diagonals by which the plan is squared.
std::vector<Sheet> foundation_plan(const Shell &shell, const Layout &layout, const SheetOptions &options);

} // namespace roundlay::sheets
