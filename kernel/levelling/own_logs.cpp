#include "kernel/levelling/levelling.h"

#include <algorithm>
#include <cmath>
#include <utility>

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

/// What a log of the pile is at the two ends of its place, seen from outside; of a half log the half.
struct Ends {
    std::optional<Length> left_height, right_height, left_width, right_width;
};

Ends ends_of(const Plan &plan, UnitSystem units, const PileLog &log, const LogPlace &place, LogEnd butt) {
    const double thickness = plan.walls[place.wall].thickness;
    const auto height = [&](double whole, bool cut) {
        const double mm = place.share * whole - place.less;
        return cut || place.share < 1 ? workable(mm, units) : Length::mm(mm);
    };
    Ends ends;
    ends.left_height = height(log.butt_height, false);
    ends.right_height = height(tip_height_at(log, place.length), place.length < log.length);
    ends.left_width = hewn(log.butt_width, thickness);
    if (log.tip_width)
        ends.right_width = hewn(workable(tip_width_at(log, place.length), units).mm(), thickness);
    if (butt == LogEnd::right) {
        std::swap(ends.left_height, ends.right_height);
        std::swap(ends.left_width, ends.right_width);
    }
    return ends;
}

/// A round's logs, from the outer ends of its first place and its last.
OwnLog round_log(const std::string &wall, int round, const Ends &left, const Ends &right, LogEnd butt) {
    OwnLog own;
    own.wall = wall;
    own.round = round;
    const bool turned = butt == LogEnd::right;
    own.sizes.butt = butt;
    own.sizes.butt_height = turned ? right.right_height : left.left_height;
    own.sizes.tip_height = turned ? left.left_height : right.right_height;
    own.sizes.butt_width = turned ? right.right_width : left.left_width;
    own.sizes.tip_width = turned ? left.left_width : right.right_width;
    return own;
}

/// The place of the same round's last piece.
std::size_t last_of_round(const std::vector<LogPlace> &places, std::size_t first) {
    std::size_t last = first;
    while (places[last].last_piece < places[last].pieces)
        ++last;
    return last;
}

} // namespace

std::vector<OwnLog> own_logs(const Plan &plan, UnitSystem units, const std::vector<PileLog> &pile,
                             const Levelled &levelled) {
    std::vector<OwnLog> logs;
    const auto &places = levelled.places;
    const auto pile_log = [&](std::size_t i) -> const PileLog & {
        return pile[levelled.after.seats[i].log.at()];
    };
    const auto ends = [&](std::size_t i) {
        return ends_of(plan, units, pile_log(i), places[i], levelled.after.seats[i].butt);
    };
    for (std::size_t i = 0; i < places.size();) {
        const std::size_t last = last_of_round(places, i);
        const std::string &wall = plan.walls[places[i].wall].name;
        logs.push_back(round_log(wall, places[i].round, ends(i), ends(last), levelled.after.seats[i].butt));
        if (i == last) logs.back().mark = pile_log(i).mark;
        for (std::size_t k = i; i < last && k <= last; ++k) {
            OwnLog piece;
            piece.wall = wall, piece.round = places[k].round, piece.piece = places[k].first_piece;
            piece.mark = pile_log(k).mark;
            logs.push_back(piece);
        }
        i = last + 1;
    }
    return logs;
}

} // namespace roundlay
