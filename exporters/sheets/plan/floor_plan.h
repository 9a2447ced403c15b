// Plans of floors: joists, beams and trimmers from above.
#pragma once

#include "exporters/sheets/frame/options.h"

#include <vector>

namespace roundlay::sheets {

/// One for each floor, the wall that its joists start in at the foot of the sheet: timbers with their tags,
/// running dimensions of joists from the room's left side and of beams and trimmers from that wall, a table
/// of the timbers. `bodies` are those of Layout::models.
std::vector<Sheet> floor_plans(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                               const SheetOptions &options);

} // namespace roundlay::sheets
