#include "kernel/layout/floors/beam_reach.h"

#include "kernel/layout/floors/joist_sizes.h"
#include "kernel/layout/rounded.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace roundlay {

namespace {

struct Reach {
    double from = 0, to = 0;
};

/// Between two places, one of which holds: the last that does.
double last_held(double held, double not_held, double part, const std::function<bool(double)> &holds) {
    while (std::abs(not_held - held) > part / 4) {
        const double middle = (held + not_held) / 2;
        (holds(middle) ? held : not_held) = middle;
    }
    return held;
}

std::optional<Reach> nearest_reach(const Reach &room, double wanted, double part,
                                   const std::function<bool(double)> &holds) {
    constexpr int samples = 200;
    const double step = (room.to - room.from) / samples;
    const auto at = [&](int i) { return room.from + i * step; };
    std::optional<int> found;
    for (int i = 0; i <= samples; ++i)
        if ((!found || std::abs(at(i) - wanted) < std::abs(at(*found) - wanted)) && holds(at(i))) found = i;
    if (!found) return {};
    int low = *found, high = *found;
    while (low > 0 && holds(at(low - 1)))
        --low;
    while (high < samples && holds(at(high + 1)))
        ++high;
    return Reach{low == 0 ? room.from : last_held(at(low), at(low - 1), part, holds),
                 high == samples ? room.to : last_held(at(high), at(high + 1), part, holds)};
}

} // namespace

std::optional<WallFace> face_beside(const Plan &plan, const FloorPlace &room, double x, double y, int way) {
    return first_face(plan, flat(room.frame.to_world({x, y, 0})),
                      static_cast<double>(way) * flat(room.frame.x));
}

Said beam_reach(const Shell &shell, const Plan &plan, const FloorPlace &room,
                const std::vector<FloorBays::Bay> &bays, const Beam &beam) {
    const auto carried = [&](double y) {
        return std::all_of(bays.begin(), bays.end(), [&](const FloorBays::Bay &bay) {
            const double middle = (bay.first + bay.second) / 2;
            return face_beside(plan, room, middle, y, -1) && face_beside(plan, room, middle, y, 1);
        });
    };
    const double least = beam.size.width.mm() / 2 + least_beside_joist;
    const auto reach =
        nearest_reach({least, room.depth - least}, beam.from_wall.mm(), finest_printed(shell), carried);
    const double from = reach ? rounded_up(shell, reach->from) : 0,
                 to = reach ? rounded_down(shell, reach->to) : 0;
    if (!reach || from > to || !carried(from) || !carried(to))
        return said(
            "both its ends must lie in walls or partitions that stand square to it and reach as far as "
            "the beam");
    return said(
        "walls carry both its ends between %1 and %2 from wall %3, and no further: one stops short there",
        exactly_in_mm(from), exactly_in_mm(to), plan.walls[room.from].name);
}

} // namespace roundlay
