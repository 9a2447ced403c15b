#include "exporters/sheets/set/scales.h"

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

// Whole walls and rounds.
constexpr std::array<Scale, 6> shell_metric{{{1.0 / 10, "1:10"},
                                             {1.0 / 20, "1:20"},
                                             {1.0 / 50, "1:50"},
                                             {1.0 / 100, "1:100"},
                                             {1.0 / 200, "1:200"},
                                             {1.0 / 500, "1:500"}}};

constexpr std::array<Scale, 9> shell_imperial{{{1.0 / 12, "1\" = 1'"},
                                               {0.75 / 12, "3/4\" = 1'"},
                                               {0.5 / 12, "1/2\" = 1'"},
                                               {0.375 / 12, "3/8\" = 1'"},
                                               {0.25 / 12, "1/4\" = 1'"},
                                               {0.1875 / 12, "3/16\" = 1'"},
                                               {0.125 / 12, "1/8\" = 1'"},
                                               {0.0625 / 12, "1/16\" = 1'"},
                                               {0.03125 / 12, "1/32\" = 1'"}}};

} // namespace

std::string said_scale(const Scale *scale, const Words &words) {
    if (scale == nullptr) return words.say("none");
    return scale->ratio == 1 && words.system() == UnitSystem::imperial ? words.say("full size")
                                                                       : scale->words;
}

std::span<const Scale> scales(UnitSystem system) {
    if (system == UnitSystem::metric) return metric;
    return imperial;
}

std::span<const Scale> shell_scales(UnitSystem system) {
    if (system == UnitSystem::metric) return shell_metric;
    return shell_imperial;
}

} // namespace roundlay::sheets
