// A marked wall at the scale that fits a page: whole, or in stretches where its tags would have no room.
#pragma once

#include "exporters/report/marked_wall.h"
#include "exporters/report/report_pages.h"

#include <limits>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// Puts it on the pages under its caption, and tells words that found no room in a table. `tallest`: of the
/// drawing, on paper.
/// No larger than that: paper per wood.
void add_wall(ReportPages &pages, MarkedWall wall, double tallest,
              double largest = std::numeric_limits<double>::infinity());

/// The scale that it is drawn to so; 0 where none fits.
double ratio_of(const ReportPages &pages, const MarkedWall &wall, double tallest);

/// Where its highest wood ends, over the foundation.
double top_of(const SeenShell &seen);

} // namespace roundlay::sheets
