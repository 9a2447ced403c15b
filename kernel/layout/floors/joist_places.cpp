#include "kernel/layout/floors/joist_places.h"

#include "kernel/layout/floors/joist_sizes.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

JoistPlaces joist_places(const Floor &floor, double room_width, const FloorBays &bays,
                         const std::vector<double> &beside) {
    JoistPlaces joists;
    joists.places = beside;
    const double widest = std::max(floor.joist.width, floor.tip_width.value_or(floor.joist.width)).mm();
    const double last = room_width - widest / 2 - least_beside_joist;
    for (double x = floor.first.value_or(floor.spacing).mm(); x <= last; x += floor.spacing.mm()) {
        const bool crowded = std::any_of(beside.begin(), beside.end(), [&](double b) {
            return std::abs(b - x) < widest + least_beside_joist;
        });
        if (crowded) continue;
        (bays.around(x - widest / 2, x + widest / 2) ? joists.places : joists.left_out).push_back(x);
    }
    std::sort(joists.places.begin(), joists.places.end());
    return joists;
}

double room_about(double x, const std::vector<double> &places, double room_width) {
    double before = 0, behind = room_width;
    for (const double place : places) {
        if (place < x) before = std::max(before, place);
        if (place > x) behind = std::min(behind, place);
    }
    return behind - before;
}

} // namespace roundlay
