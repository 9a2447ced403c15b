// What a record and its decisions put on the elevation of a wall.
#pragma once

#include "exporters/report/marked_wall.h"
#include "exporters/report/report.h"
#include "exporters/sheets/form/form_logs.h"

#include <optional>
#include <vector>

namespace roundlay::sheets {

/// Each log hatched by what becomes of it, with its tag and the letter.
std::vector<MarkedArea> decision_areas(const Layout &layout, const std::vector<FormLog> &logs,
                                       const Words &words);

/// Where new wood comes into logs, numbered as its tag ends: "M1". Measured from the nearer end of its log,
/// where that shall be longer or shorter than it was found.
std::vector<MarkedArea> mend_areas(const Layout &layout, const std::vector<FormLog> &logs,
                                   const ReportSource &source);

/// Zones of the wood as they are seen from that side, over the tags. A tag has ≠ behind it where numbers of
/// the log contradict one another, and p where nobody has measured its height or width.
std::vector<MarkedArea> wood_areas(const Record &record, const Layout &layout,
                                   const std::vector<FormLog> &logs, WallSide side, const Words &words);

/// Pegs and later cuts whose place is told.
std::vector<MarkedPoint> found_points(const Record &record, const Layout &layout,
                                      const std::vector<FormLog> &logs);

/// Where the running dimensions of a log start.
struct LogZero {
    double x = 0;          ///< of its wall
    bool from_left = true; ///< they run to the right, seen from outside
    double place(const NotedLength &at) const { return from_left ? x + at.value->mm() : x - at.value->mm(); }
};

/// At one of its ends; of a log that begins at an opening perhaps at an end of its wall's round. Nothing
/// where nobody said from which corner, or that corner is neither: its places are drawn nowhere.
std::optional<LogZero> zero_of(const Record &record, const Layout &layout, const FormLog &log);

/// A part of a log's face.
struct SeenPart {
    Band band;
    bool behind = false; ///< what lies there lies on the other side alone
};

/// Which parts of the log's face show the zone on that side.
std::vector<SeenPart> parts_seen(const ConditionZone &zone, WallSide side);

/// From where to where a zone of the log runs in its wall's x; what is not said runs to the log's end.
/// Nothing where a place that is said is not known, or lies past the log.
std::optional<Along> zone_on_wall(const Record &record, const Layout &layout, const FormLog &log,
                                  const ConditionZone &zone);

/// Does the record say anything of the wood that only the inside shows?
bool shows_inside(const std::vector<FormLog> &logs);

} // namespace roundlay::sheets
