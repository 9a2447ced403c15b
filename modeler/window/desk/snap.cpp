#include "modeler/window/desk/snap.h"

#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

constexpr double longest_reach = 60; // mm: from far away a pointer would never get off the lines

} // namespace

Snapped snapped(double at, const std::vector<double> &lines, double reach, double grid) {
    double nearest = std::min(reach, longest_reach);
    Snapped found{std::round(at / grid) * grid, false};
    for (const double line : lines) {
        const double away = std::abs(line - at);
        if (away > nearest) continue;
        nearest = away;
        found = {line, true};
    }
    return found;
}

double snapped_slope(double rise_per_run, bool free) {
    constexpr double flattest = 24, figures = 1000; // runs per rise beyond which it counts as level
    const double steep = std::min(std::abs(rise_per_run), 1.0), sign = rise_per_run < 0 ? -1 : 1;
    if (free) return sign * std::round(steep * figures) / figures;
    return steep * flattest < 1 ? 0 : sign / (std::round(2 / steep) / 2);
}

} // namespace roundlay::window
