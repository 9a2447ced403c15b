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
std::vector<MarkedArea> wood_areas(const Layout &layout, const std::vector<FormLog> &logs, WallSide side,
                                   const Words &words);

/// Pegs and later cuts whose place is told.
std::vector<MarkedPoint> found_points(const Layout &layout, const std::vector<FormLog> &logs);

/// Where a running dimension of the log lies in its wall's x; nothing where its zero or its value is not
/// known.
std::optional<double> place_on_wall(const Layout &layout, const FormLog &log, const NotedLength &at);

/// Does the record say anything of the wood that only the inside shows?
bool shows_inside(const std::vector<FormLog> &logs);

} // namespace roundlay::sheets
