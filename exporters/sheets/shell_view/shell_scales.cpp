#include "exporters/sheets/shell_view/shell_scales.h"

#include <array>

namespace roundlay::sheets {
namespace {

constexpr std::array<Scale, 6> metric{{{1.0 / 10, "1:10"},
                                       {1.0 / 20, "1:20"},
                                       {1.0 / 50, "1:50"},
                                       {1.0 / 100, "1:100"},
                                       {1.0 / 200, "1:200"},
                                       {1.0 / 500, "1:500"}}};

constexpr std::array<Scale, 9> imperial{{{1.0 / 12, "1\" = 1'"},
                                         {0.75 / 12, "3/4\" = 1'"},
                                         {0.5 / 12, "1/2\" = 1'"},
                                         {0.375 / 12, "3/8\" = 1'"},
                                         {0.25 / 12, "1/4\" = 1'"},
                                         {0.1875 / 12, "3/16\" = 1'"},
                                         {0.125 / 12, "1/8\" = 1'"},
                                         {0.0625 / 12, "1/16\" = 1'"},
                                         {0.03125 / 12, "1/32\" = 1'"}}};

} // namespace

std::span<const Scale> shell_scales(UnitSystem system) {
    if (system == UnitSystem::metric) return metric;
    return imperial;
}

} // namespace roundlay::sheets
