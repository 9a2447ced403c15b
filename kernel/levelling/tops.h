// The tops of all walls for one arrangement, kept so that what a change would cost is known at once.
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

    bool fits(int log, std::size_t place) const { return stacks_->fits(log, static_cast<int>(place)); }

  private:
    /// Sums of errors over a place and all above it.
    struct Above {
        double left = 0, right = 0;
        double count = 0;
    };
    void sum_up(std::size_t wall);
    std::size_t wall_of(std::size_t place) const {
        return static_cast<std::size_t>(stacks_->places()[place].wall);
    }
    Excess change(std::size_t place, const Seat &seat) const;

    const Stacks *stacks_;
    std::vector<Seat> seats_;
    std::vector<Above> above_;    ///< by place
    std::vector<double> squares_; ///< by wall
    double total_ = 0;
};

} // namespace roundlay
