#include "kernel/levelling/levelling.h"

#include "kernel/levelling/bounds.h"
#include "kernel/levelling/search.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

double along(double butt, double tip, double whole, double length) {
    return whole > 0 ? butt + (tip - butt) * std::min(1.0, length / whole) : butt;
}

/// Over both ends of every log, cut to the mean length of the places: close to what any arrangement brings.
double mean_height(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places) {
    double length = 0, sum = 0;
    for (const LogPlace &place : places)
        length += place.length / static_cast<double>(places.size());
    for (const PileLog &log : pile)
        sum += (log.butt_height + tip_height_at(log, length)) / 2;
    return sum / static_cast<double>(pile.size());
}

std::string shortage(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places,
                     UnitSystem units) {
    std::vector<double> have, need;
    for (const PileLog &log : pile)
        have.push_back(log.length);
    for (const LogPlace &place : places)
        need.push_back(place.length);
    return "the pile has " + std::to_string(pile.size()) + (pile.size() == 1 ? " log" : " logs") +
           " and the shell needs " + std::to_string(places.size()) +
           "; missing: " + missing_logs(need, have, units);
}

} // namespace

double tip_height_at(const PileLog &log, double length) {
    return along(log.butt_height, log.tip_height, log.length, length);
}

double tip_width_at(const PileLog &log, double length) {
    const double butt = log.butt_width.value_or(log.tip_width.value_or(0));
    return along(butt, log.tip_width.value_or(butt), log.length, length);
}

Arrangement arranged(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places,
                     std::vector<Seat> seats, double log_height) {
    const Stacks stacks(pile, places, log_height);
    Arrangement result;
    Indexed<double, RunningTop> tops(stacks.tops());
    const auto add = [&](std::optional<Index<RunningTop>> top, double excess) {
        if (!top) return 0.0;
        double &error = tops[*top];
        error += excess;
        result.worst = std::max(result.worst, std::abs(error));
        return error;
    };
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Excess e = stacks.excess(i, seats[i]);
        result.errors.push_back({add(places[i].left_top, e.left), add(places[i].right_top, e.right)});
    }
    result.squares = stacks.squares(seats);
    result.seats = std::move(seats);
    return result;
}

std::variant<Levelled, std::string> level_logs(const std::vector<PileLog> &pile,
                                               const std::vector<LogPlace> &places, UnitSystem units) {
    if (pile.empty() || places.empty()) return std::string("there are no logs to level");
    Levelled result;
    result.places = places;
    result.log_height = mean_height(pile, places);
    const Stacks stacks(pile, places, result.log_height);
    const auto first = as_they_come(stacks);
    if (!first) return shortage(pile, places, units);
    result.before = arranged(pile, places, *first, result.log_height);
    std::vector<Seat> best = improved(stacks, *first);
    if (auto proven = proven_best(stacks, best)) {
        best = *proven;
        result.proven = true;
    }
    result.after = arranged(pile, places, best, result.log_height);
    const LevelBounds bounds = level_bounds(stacks);
    result.least_squares = bounds.squares;
    result.least_worst = bounds.worst;
    return result;
}

} // namespace roundlay
