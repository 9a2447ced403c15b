// Where running dimensions of a found log lie: on the log that a layout has of it.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/piece_places.h"
#include "kernel/record/record.h"

#include <optional>

namespace roundlay {

/// A found log in a layout, and the end that its dimensions run from.
struct LogRun {
    Index<WallPlace> wall;
    AlongWall log;            ///< in the wall's own x, from end to end
    double zero = 0;          ///< in the same x
    bool zero_at_left = true; ///< dimensions run to the right, seen from outside

    /// In the wall's own x, mm.
    double place(double along) const { return zero_at_left ? zero + along : zero - along; }
    /// The dimension that lies there.
    double dimension(double x) const { return zero_at_left ? x - zero : zero - x; }
};

/// Nothing where the layout has no such log, or the record's zero is no end of it: a corner at an end of its
/// wall, by any of its names, or the opening that it ends at. As everywhere, one of the logs that openings
/// part a round into may be told from the far corner of its wall.
std::optional<LogRun> run_of(const Record &record, const Layout &layout, const FoundLog &log);

/// Was that place noted further along the log than it reaches? By its length where that was taped, else by
/// the layout, to what a tape and a hewn end are off.
bool lies_past(const Record &record, const Layout &layout, const FoundLog &log, const NotedLength &place);

/// The least of what was measured along the log; nothing where nothing was.
std::optional<double> least(const FoundLog &log, NotedLength FoundEnd::*of_end,
                            NotedLength FoundStation::*of_station);

} // namespace roundlay
