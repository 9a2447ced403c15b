// Plans of floors: joists, beams and trimmers from above.
#pragma once

#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

/// Of one of Layout::floors, the wall that its joists start in at the foot of the sheet: timbers with their
/// tags, running dimensions of joists from the room's left side and of beams and trimmers from that wall, a
/// table of the timbers.
Subject floor_subject(const Layout &layout, Index<FloorPlace> floor);

} // namespace roundlay::sheets
