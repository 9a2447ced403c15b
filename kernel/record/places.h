// What of a log is told by running dimensions along it, from its zero.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/record/found_log.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

/// "zones, pegs": the kinds of parts of the log whose place was taken, be it read or not. Nothing where there
/// are none.
std::optional<Said> parts_with_places(const FoundLog &log);

/// Places were taken along it, and nobody said from which corner: which end they are near is not known.
bool lacks_zero(const FoundLog &log);

/// A number that was taken along a log, read or not.
struct PlaceAlong {
    std::string_view list;     ///< as the format calls the part: "station", "zone", …
    std::size_t index;         ///< of the part in its list
    std::string_view key;      ///< "at", of zones "from" and "to"
    const NotedLength &number; ///< of the log that was asked
};

/// "zone[2].to".
std::string path_of(const PlaceAlong &place);

/// All of them, list by list.
std::vector<PlaceAlong> places_along(const FoundLog &log);

} // namespace roundlay
