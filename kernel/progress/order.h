// What must be in its place before what, by geometry alone: a piece comes straight down on what lies under
// it, and none that lies under it can come down past it afterwards.
//
// New wood in a mended log is put together with the log before the two are lifted: what is told of either is
// told of both, and only the log itself stands in the lists of others.
#pragma once

#include "kernel/layout/wood/interference.h"

#include <vector>

namespace roundlay {

/// Each list without doubles, in the order of Layout::pieces.
struct Neighbours {
    std::vector<Index<Piece>> rests_on;   ///< it touches them from above
    std::vector<Index<Piece>> lies_over;  ///< these too lie under it, and it does not touch them
    std::vector<Index<Piece>> lies_under; ///< they lie over it
    std::vector<Index<Piece>>
        covers; ///< pegs go down into these that it lies over: nobody drives them afterwards
};

using RaisingOrder = Indexed<Neighbours, Piece>;

/// One for each of Layout::pieces. bodies: by Layout::models index. Takes its time, as
/// blocked_on_the_way_down does.
RaisingOrder raising_order(const Layout &layout, const Bodies &bodies, KnownMeetings *known = nullptr);

} // namespace roundlay
