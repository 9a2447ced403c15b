#include "kernel/levelling/stacks.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

Stacks::Stacks(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places, double log_height)
    : pile_(pile), places_(places) {
    for (const LogPlace &place : places) { // places come by round
        tops_ = std::max({tops_, static_cast<std::size_t>(place.left_top + 1),
                          static_cast<std::size_t>(place.right_top + 1)});
        for (const PileLog &log : pile)
            excess_.push_back({place.share * (log.butt_height - log_height),
                               place.share * (tip_height_at(log, place.length) - log_height)});
    }
}

LevelErrors Stacks::errors(const std::vector<Seat> &seats) const {
    std::vector<double> tops(tops_);
    LevelErrors all;
    const auto add = [&](int top, double excess) {
        if (top < 0) return;
        double &error = tops[static_cast<std::size_t>(top)];
        error += excess;
        all.worst = std::max(all.worst, std::abs(error));
        all.squares += error * error;
    };
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const Excess e = excess(static_cast<int>(i), seats[i]);
        add(places_[i].left_top, e.left);
        add(places_[i].right_top, e.right);
    }
    return all;
}

} // namespace roundlay
