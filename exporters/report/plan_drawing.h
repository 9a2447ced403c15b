// The plan of a house with words beside its walls and at its corners.
#pragma once

#include "exporters/report/hatch.h"
#include "exporters/report/report_pages.h"
#include "exporters/sheets/set/scales.h"

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace roundlay::sheets {

/// What is told on it.
struct PlanMarks {
    std::function<std::string(Index<WallPlace> wall)> beside_wall;
    std::function<std::string(const std::string &corner)> corner_called; ///< by the plan's name
    std::function<Hatch(Index<WallPlace> wall)> hatch;                   ///< empty: none on any
    std::string caption;                                                 ///< over it; empty: none
};

/// With gaps where openings are, its caption with the scale.
Block drawn_plan(const Draft &draft, const PlanMarks &marks, const Words &words, const Scale &scale);

/// The largest scale at which all these plans are no wider and no taller than that; null where none is.
const Scale *plan_scale(const std::vector<std::pair<const Draft *, const PlanMarks *>> &plans,
                        const Words &words, double width, double tallest);

} // namespace roundlay::sheets
