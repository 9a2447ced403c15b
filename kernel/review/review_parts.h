// Parts of the review that ask more than the layout: of wood and settling, and of floors.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/wood/body.h"

#include <vector>

namespace roundlay {

void review_wood(const Shell &shell, Findings &findings);
/// `bodies`: one for each of layout.models.
void review_floors(const Shell &shell, const Layout &layout, const Bodies &bodies, Findings &findings);

} // namespace roundlay
