#include "kernel/levelling/stacks.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

Stacks::Stacks(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places, double log_height)
    : pile_(pile), places_(places) {
    for (const LogPlace &place : places) { // places come by round
        for (const auto top : {place.left_top, place.right_top})
            if (top) tops_ = std::max(tops_, top->at() + 1);
        for (const PileLog &log : pile)
            excess_.push_back({place.share * (log.butt_height - log_height),
                               place.share * (tip_height_at(log, place.length) - log_height)});
    }
}

LevelErrors Stacks::errors(const std::vector<Seat> &seats) const {
    Indexed<double, RunningTop> tops(tops_);
    LevelErrors all;
    const auto add = [&](std::optional<Index<RunningTop>> top, double excess) {
        if (!top) return;
        double &error = tops[*top];
        error += excess;
        all.worst = std::max(all.worst, std::abs(error));
        all.squares += error * error;
    };
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const Excess e = excess(i, seats[i]);
        add(places_[i].left_top, e.left);
        add(places_[i].right_top, e.right);
    }
    return all;
}

} // namespace roundlay
