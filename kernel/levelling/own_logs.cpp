#include "kernel/levelling/levelling.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// What was worked out, not measured, is stated no finer than a rule is read.
Length workable(double mm, UnitSystem units) {
    if (units == UnitSystem::metric) return Length::mm(std::round(mm));
    constexpr double parts = 32;
    return Length::inches(std::round(Length::mm(mm).inches() * parts) / parts);
}

/// A log is hewn down to the wall's thickness where it is wider.
std::optional<Length> hewn(std::optional<double> width, double thickness) {
    if (!width) return {};
    return Length::mm(std::min(*width, thickness));
}

OwnLog own_log(const Layout &layout, UnitSystem units, const PileLog &log, const LogPlace &place,
               LogEnd butt) {
    const WallPlace &wall = layout.walls[static_cast<std::size_t>(place.wall)];
    OwnLog own;
    own.wall = wall.name;
    own.round = place.round;
    own.mark = log.mark;
    own.sizes.butt_height = Length::mm(log.butt_height);
    own.sizes.tip_height = workable(tip_height_at(log, place.length), units);
    own.sizes.butt_width = hewn(log.butt_width, wall.thickness);
    if (log.tip_width)
        own.sizes.tip_width = hewn(workable(tip_width_at(log, place.length), units).mm(), wall.thickness);
    own.sizes.butt = butt;
    return own;
}

} // namespace

std::vector<OwnLog> own_logs(const Layout &layout, UnitSystem units, const std::vector<PileLog> &pile,
                             const Levelled &levelled) {
    std::vector<OwnLog> logs;
    for (std::size_t i = 0; i < levelled.places.size(); ++i) {
        const Seat &seat = levelled.after.seats[i];
        logs.push_back(
            own_log(layout, units, pile[static_cast<std::size_t>(seat.log)], levelled.places[i], seat.butt));
    }
    return logs;
}

} // namespace roundlay
