// Where a log that is too long for one drawing is divided.
#pragma once

#include "exporters/sheets/cut_sheet/ruler.h"

#include <vector>

namespace roundlay::sheets {

/// `count` stretches that together are [0, length], none of which needs much more paper than another once
/// what is empty is left out. Divided clear of all places where that can be.
std::vector<Shown> divided(double length, int count, std::vector<Place> places, double scale);

} // namespace roundlay::sheets
