#include "modeler/window/desk/snap.h"

#include <cmath>

namespace roundlay::window {

Snapped snapped(double at, const std::vector<double> &lines, double reach, double grid) {
    double nearest = reach;
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
