#include "kernel/layout/floors/planned_timbers.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/floors/side_reach.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

bool butt_lies_at_datum(const Floor &floor, double depth, int number) {
    if (floor.beams.empty()) return number % 2 == 0;
    double first = depth, last = 0;
    for (const Beam &b : floor.beams) {
        first = std::min(first, b.from_wall.mm());
        last = std::max(last, b.from_wall.mm());
    }
    if (std::abs(first - (depth - last)) < tolerance::clear) return number % 2 == 0;
    return first > depth - last;
}

double half_way(const Floor &floor, double depth, double y) {
    double before = 0, behind = depth;
    for (const Beam &b : floor.beams) {
        if (b.from_wall.mm() < y) before = std::max(before, b.from_wall.mm());
        if (b.from_wall.mm() > y) behind = std::min(behind, b.from_wall.mm());
    }
    return (behind - before) / 2;
}

void put_carriers_first(Indexed<PlannedTimber> &timbers) {
    Indexed<Index<PlannedTimber>, PlannedTimber> place; // of each as it was
    Indexed<PlannedTimber> sorted;
    for ([[maybe_unused]] const PlannedTimber &t : timbers)
        place.push_back(Index<PlannedTimber>(0));
    for (const TimberUse use : {TimberUse::beam, TimberUse::joist, TimberUse::trimmer, TimberUse::trimmed})
        for (const auto i : timbers.indices())
            if (timbers[i].use == use) place[i] = sorted.push_back(timbers[i]);
    for (PlannedTimber &t : sorted)
        for (TimberEnd *end : {&t.datum, &t.far})
            if (end->carrier) end->carrier = place[*end->carrier];
    timbers = std::move(sorted);
}

void share_load(FloorPlan &plan, const Plan &house, double spacing) {
    for (PlannedTimber &t : plan.timbers) {
        if (t.across()) continue;
        std::optional<double> left, right; // to the next joist
        for (const PlannedTimber &o : plan.timbers) {
            if (o.across() || o.to.y <= t.from.y || o.from.y >= t.to.y) continue;
            const double apart = o.from.x - t.from.x;
            if (apart < 0) left = std::min(left.value_or(-apart), -apart);
            if (apart > 0) right = std::min(right.value_or(apart), apart);
        }
        if (!left) left = side_reach(house, plan.place, t, -1, spacing);
        if (!right) right = side_reach(house, plan.place, t, 1, spacing);
        t.load_width = (*left + *right) / 2;
    }
}

bool rest_on_beams(FloorPlan &plan, double joist_height) {
    for (PlannedTimber &beam : plan.timbers) {
        if (beam.use != TimberUse::beam) continue;
        double least = joist_height;
        bool carries = false;
        const double half = beam.width_from / 2;
        for (PlannedTimber &t : plan.timbers) {
            if (t.across() || t.from.y > beam.from.y - half || t.to.y < beam.from.y + half) continue;
            if (t.from.x < beam.from.x || t.from.x > beam.to.x) continue;
            t.rests.push_back(beam.from.y - t.from.y);
            for (const double y : {beam.from.y - half, beam.from.y + half})
                least = std::min(least, t.height(t.along(y)));
            carries = true;
        }
        if (!carries) return false;
        beam.top = plan.place.level - least;
    }
    return true;
}

TimberHold hold_of(const FloorPlan &plan, const PlannedTimber &t, const TimberEnd &end, double x,
                   Index<Timber> first) {
    const double face = x > 0 ? x - end.along() : end.along();
    TimberHold hold;
    hold.neck = std::min(t.width(x), t.width(face)) - (end.tailed ? 2 * plan.tail * end.bearing : 0);
    hold.full = std::max(t.height(x), t.height(face));
    hold.height = end.height > 0 ? end.height : std::min(t.height(x), t.height(face));
    if (!end.carrier) return hold;
    const PlannedTimber &carrier = plan.timbers[*end.carrier];
    hold.carrier = timber_of(*end.carrier, first);
    hold.reach = carrier.across() ? t.from.x - carrier.from.x : t.from.y - carrier.from.y;
    return hold;
}

Index<PlannedTimber> beam_at(const FloorPlan &plan, const PlannedTimber &t, double rest) {
    for (const auto i : plan.timbers.indices()) {
        const PlannedTimber &beam = plan.timbers[i];
        if (beam.use == TimberUse::beam && std::abs(beam.from.y - t.from.y - rest) < tolerance::weld &&
            beam.from.x < t.from.x && beam.to.x > t.from.x)
            return i;
    }
    return Index<PlannedTimber>(0);
}

TimberRest rest_of(const FloorPlan &plan, const PlannedTimber &t, double at, Index<Timber> first) {
    const Index<PlannedTimber> index = beam_at(plan, t, at);
    const PlannedTimber &beam = plan.timbers[index];
    const double middle = t.datum.along() + at, half = beam.width_from / 2;
    return {timber_of(index, first), at,
            t.from.x - beam.from.x,  beam.width_from,
            t.top - beam.top,        std::max(t.height(middle - half), t.height(middle + half))};
}

} // namespace roundlay
