// The numbers of the record by the openings of the plan that they belong to, in millimetres.
#pragma once

#include "kernel/measured/house_numbers.h"
#include "kernel/record/record.h"
#include "kernel/shell/shell.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace roundlay {

/// Where its jambs stand, in the middle of what was measured at sill and head, from its zero along the wall.
struct Jambs {
    std::optional<double> near, far;
    std::optional<double> near_leans, far_leans; ///< from the sill to the head, where both were measured
    int count = 0;                               ///< of the numbers that were taken
};
Jambs jambs_of(const RecordedOpening &opening);

/// Which of Shell::openings are called so (`name_of`), in the wall that the record says where it says one.
std::vector<std::size_t> openings_called(const Shell &shell, const RecordedOpening &opening);

} // namespace roundlay
