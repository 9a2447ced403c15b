#include "kernel/levelling/stacks.h"

namespace roundlay {

Stacks::Stacks(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places, double log_height)
    : pile_(pile), places_(places) {
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto wall = static_cast<std::size_t>(places[i].wall);
        if (columns_.size() <= wall) columns_.resize(wall + 1);
        columns_[wall].push_back(static_cast<int>(i)); // places come by round
        for (const PileLog &log : pile)
            excess_.push_back({places[i].share * (log.butt_height - log_height),
                               places[i].share * (tip_height_at(log, places[i].length) - log_height)});
    }
}

double Stacks::squares(std::size_t wall, const std::vector<Seat> &seats) const {
    double left = 0, right = 0, sum = 0;
    for (const int place : columns_[wall]) {
        const Excess e = excess(place, seats[static_cast<std::size_t>(place)]);
        left += e.left, right += e.right;
        sum += left * left + right * right;
    }
    return sum;
}

} // namespace roundlay
