#include "exporters/sheets/cut_sheet/scales.h"

#include <array>

namespace roundlay::sheets {
namespace {

// ISO 5455 (from memory): full size and reductions.
constexpr std::array<Scale, 6> metric{{{1, "1:1"},
                                       {1.0 / 2, "1:2"},
                                       {1.0 / 5, "1:5"},
                                       {1.0 / 10, "1:10"},
                                       {1.0 / 20, "1:20"},
                                       {1.0 / 50, "1:50"}}};

constexpr std::array<Scale, 7> imperial{{{1, "full size"},
                                         {3.0 / 12, "3\" = 1'"},
                                         {1.5 / 12, "1 1/2\" = 1'"},
                                         {1.0 / 12, "1\" = 1'"},
                                         {0.75 / 12, "3/4\" = 1'"},
                                         {0.5 / 12, "1/2\" = 1'"},
                                         {0.25 / 12, "1/4\" = 1'"}}};

} // namespace

std::span<const Scale> scales(UnitSystem system) {
    if (system == UnitSystem::metric) return metric;
    return imperial;
}

} // namespace roundlay::sheets
