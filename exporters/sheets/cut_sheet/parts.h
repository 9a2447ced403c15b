// Where a log that is too long for one drawing is divided.
#pragma once

#include "exporters/sheets/cut_sheet/ruler.h"

#include <vector>

namespace roundlay::sheets {

/// `count` stretches that together are [0, length], divided as evenly as can be at places that keep `near`
/// away from every point. Divided evenly where no such place is to be found.
std::vector<Shown> divided(double length, int count, const std::vector<double> &points, double near);

} // namespace roundlay::sheets
