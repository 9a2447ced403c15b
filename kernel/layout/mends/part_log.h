// A log parted by a mend: what stays of it, and the new wood.
#pragma once

#include "kernel/layout/mends/mend_region.h"

#include <optional>

namespace roundlay {

/// Both as they are cut, each in a frame of its own. Together they are the log, joints and bores and all.
struct PartedLog {
    Piece stays, comes;
};

enum class NotParted {
    bore,    ///< an edge of the mend runs through the side of a bore
    shoulder ///< it parts a notch at a corner that is not square, within the slant of its shoulder
};

/// `log`: as it is before this mend, perhaps mended elsewhere already; `region` in its frame. Tags, notes and
/// what the new wood is stay the log's: for the caller.
struct Parting {
    std::optional<PartedLog> parts;
    NotParted why = NotParted::bore;
    double at = 0; ///< of a bore, along the log
};
Parting part_log(const Piece &log, const MendRegion &region);

} // namespace roundlay
