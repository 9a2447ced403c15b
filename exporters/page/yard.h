// What the yard page says of a shell, in words.
#pragma once

#include "exporters/lists/cut_list.h"
#include "exporters/page/page.h"
#include "kernel/layout/wood/body.h"
#include "kernel/progress/ticked.h"

namespace roundlay {

/// All of these are of one shell that stands.
struct YardSource {
    const Shell &shell;
    const Layout &layout;
    const Bodies &bodies;
    const CutList &list; ///< which speaks the page's language; told of what was found, where that is known
    const Findings &findings;
    const Ticked &ticked; ///< empty where nothing is ticked
};

/// Without its sheets.
Yard yard_of(const YardSource &source);

} // namespace roundlay
