// What the timbers of a floor are called.
#pragma once

#include "kernel/layout/floors/floor_plan.h"

#include <string>
#include <vector>

namespace roundlay {

/// "G-J03", in the order of the plan's timbers. Counted by place: joists from the left and away from the
/// wall, whether trimmed or not; B for beams, T for trimmers.
Indexed<std::string, PlannedTimber> tags_of(const FloorPlan &plan);

} // namespace roundlay
