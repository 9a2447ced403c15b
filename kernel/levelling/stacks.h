// The search's view of a pile: what each log adds to the error at both ends, in every place it fits.
#pragma once

#include "kernel/levelling/levelling.h"

namespace roundlay {

/// Height over the mean that a log brings to an end.
struct Excess {
    double left = 0, right = 0;
};

/// Of all tops, after every log that adds to them.
struct LevelErrors {
    double worst = 0, squares = 0; ///< the largest error, mm; the sum of squared ones, mm2
};

class Stacks {
  public:
    Stacks(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places, double log_height);

    const std::vector<PileLog> &pile() const { return pile_; }
    const std::vector<LogPlace> &places() const { return places_; }
    std::size_t tops() const { return tops_; } ///< how many running tops there are
    Indices<PileLog> logs() const { return Indices<PileLog>(pile_.size()); }

    bool fits(Index<PileLog> log, std::size_t place) const {
        return pile_[log.at()].length >= places_[place].length;
    }
    Excess excess(std::size_t place, const Seat &seat) const {
        const Excess &e = excess_[place * pile_.size() + seat.log.at()];
        return seat.butt == LogEnd::left ? e : Excess{e.right, e.left};
    }
    LevelErrors errors(const std::vector<Seat> &seats) const;
    double squares(const std::vector<Seat> &seats) const { return errors(seats).squares; }

  private:
    const std::vector<PileLog> &pile_;
    const std::vector<LogPlace> &places_;
    std::size_t tops_ = 0;
    std::vector<Excess> excess_; ///< by place, then log, butt left
};

} // namespace roundlay
