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

} // namespace roundlay::window
