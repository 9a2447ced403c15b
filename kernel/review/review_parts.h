// Parts of the review that ask more than the layout: of wood and settling, and of floors.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

void review_wood(const Shell &shell, Findings &findings);
void review_floors(const Shell &shell, const Layout &layout, Findings &findings);

} // namespace roundlay
