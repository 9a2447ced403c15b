// The numbers of a record by the logs of the walls that they belong to, in millimetres.
#pragma once

#include "kernel/layout/courses/courses.h"
#include "kernel/record/record.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace roundlay {

struct EndNumbers {
    std::optional<double> height, width; ///< of the log at its shoulder
    std::optional<double> overhang;
    std::optional<double> ran_past; ///< as it was found, where it is another one now
    std::optional<double> level;    ///< of its upper edge, over the plane that all offsets are told from
    /// Heights of the tail: at its shoulder outside and inside, at its end outside and inside.
    std::array<std::optional<double>, 4> tail;
    std::optional<double> gap; ///< between the tail and what it lies on
};

struct StationNumbers {
    std::string tag; ///< of the log that it was measured on
    double x = 0;    ///< of the wall
    std::optional<double> height, gap_below, gap_above;
};

/// Of one log right through, from all found logs that openings parted it into.
struct LogNumbers {
    std::array<EndNumbers, 2> ends; ///< left, right, seen from outside
    std::vector<StationNumbers> stations;
    std::vector<const FoundLog *> logs;

    const EndNumbers &end(LogEnd at) const { return ends[at == LogEnd::left ? 0 : 1]; }
};

using HouseNumbers = Indexed<std::vector<LogNumbers>, WallPlace>;

/// The end of that wall that lies at a corner: by the record's name for it, or the plan's.
std::optional<LogEnd> end_at(const Record &record, const Plan &plan, Index<WallPlace> wall,
                             const std::string &corner);

/// Ends are there without walls' logs being known; stations want the courses to know where logs begin.
HouseNumbers numbers_by_log(const Record &record, const Plan &plan, const Courses &courses);

/// A level over the plane that all are told from; nothing where it was not read or no plane is called so. A
/// record of one plane means that one; without any, levels are told from one that has no name.
std::optional<double> level_of(const Record &record, const NotedLength &level, const std::string &plane);

/// What is taken of a number: nothing where it was not read, or is contradicted.
std::optional<double> taken(const NotedLength &number);

} // namespace roundlay
