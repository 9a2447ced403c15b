// The running tops of all walls for one arrangement, kept so that what a change would cost is known at once.
#pragma once

#include "kernel/levelling/stacks.h"

namespace roundlay {

/// Holds an arrangement. All sums of squares in mm2.
class Tops {
  public:
    Tops(const Stacks &stacks, std::vector<Seat> seats);

    const std::vector<Seat> &seats() const { return seats_; }
    double total() const { return total_; }

    /// How much the sum of squares would grow (negative: better) with another log in one place, or in two.
    double growth(std::size_t place, const Seat &seat) const;
    double growth(std::size_t a, const Seat &seat_a, std::size_t b, const Seat &seat_b) const;

    /// Lays the logs without asking.
    void lay(std::size_t place, const Seat &seat);

    bool fits(Index<PileLog> log, std::size_t place) const { return stacks_->fits(log, place); }

  private:
    /// One log's end on a running top: the sum of the errors from there up, and how many they are.
    struct Rest {
        std::size_t place = 0;
        bool right = false;
        double sum = 0, count = 0;
    };
    /// Where a log's end stands in a top; -1: it adds to none.
    struct At {
        std::optional<Index<RunningTop>> top;
        std::size_t index = 0;
    };
    void sum_up(Index<RunningTop> top);
    Excess change(std::size_t place, const Seat &seat) const;
    const Rest &rest(const At &at) const { return tops_[*at.top][at.index]; }
    double growth_at(const At &at, double by) const;
    double together(const At &a, double by_a, const At &b, double by_b) const;

    const Stacks *stacks_;
    std::vector<Seat> seats_;
    Indexed<std::vector<Rest>, RunningTop> tops_; ///< from the foundation up
    std::vector<At> left_, right_;                ///< by place
    Indexed<double, RunningTop> squares_;
    double total_ = 0;
};

} // namespace roundlay
