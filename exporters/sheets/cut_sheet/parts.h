// Where a log that is too long for one drawing is divided.
#pragma once

#include "exporters/sheets/cut_sheet/ruler.h"

#include <vector>

namespace roundlay::sheets {

enum class Division {
    by_need, ///< none of the stretches needs much more paper than another once what is empty is left out
    evenly   ///< none is much longer than another
};

/// `count` stretches that together are [0, length], divided clear of all places where that can be.
std::vector<Shown> divided(Division division, double length, int count, const std::vector<Place> &places,
                           double scale);

} // namespace roundlay::sheets
