// Plans: the logs of each round from above, and the ground the shell stands on.
#pragma once

#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

/// One plan for each round, all to one scale: logs with their tags, an arrow from butt to tip, pegs, walls'
/// lengths.
Subject round_subject();

/// Where the walls stand on the foundation: outlines, corners from one origin in both directions, and the
/// diagonals by which the plan is squared. Of a layout that has walls.
Subject foundation_subject();

} // namespace roundlay::sheets
