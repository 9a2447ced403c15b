// Two states of a house side by side on paper: each wall with what is new, gone, longer, shorter, re-cut and
// moved.
#pragma once

#include "exporters/sheets/set/draft.h"
#include "kernel/compare/compare.h"

#include <vector>

namespace roundlay::sheets {

/// On upright A4 or Letter. Walls as the second state has them, with what is gone dashed in its place; then
/// walls that only the first has; then every piece that differs.
std::vector<Sheet> comparison_sheets(const Draft &before, const Draft &after,
                                     const std::vector<ComparedPiece> &pieces);

} // namespace roundlay::sheets
