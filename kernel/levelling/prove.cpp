#include "kernel/levelling/search.h"

#include <algorithm>
#include <numeric>

namespace roundlay {

namespace {

constexpr long most_steps = 3'000'000; // about a second

/// Fills the places wall by wall from the sill up and turns back where the errors so far are no better than
/// the best arrangement's.
class Prover {
  public:
    Prover(const Stacks &stacks, std::vector<Seat> best)
        : stacks_(stacks), best_(std::move(best)), seats_(best_.size()), used_(stacks.pile().size()),
          order_(best_.size()), tops_(stacks.tops()), least_(stacks.squares(best_)) {
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::ranges::stable_sort(order_, {}, [&](std::size_t i) { return stacks.places()[i].wall; });
    }

    std::optional<std::vector<Seat>> run() {
        fill(0, 0);
        if (steps_ > most_steps) return {};
        return best_;
    }

  private:
    void fill(std::size_t at, double squares) {
        if (++steps_ > most_steps || squares >= least_) return;
        if (at == order_.size()) {
            best_ = seats_, least_ = squares;
            return;
        }
        for (const auto log : stacks_.logs())
            if (!used_[log.at()] && stacks_.fits(log, order_[at]))
                for (const LogEnd butt : {LogEnd::left, LogEnd::right})
                    lay({log, butt}, at, squares);
    }

    /// The square of the error that a top has with `excess` more on it.
    double raise(std::optional<Index<RunningTop>> top, double excess) {
        if (!top) return 0;
        double &error = tops_[*top];
        error += excess;
        return error * error;
    }

    void lay(Seat seat, std::size_t at, double squares) {
        const std::size_t index = order_[at];
        const LogPlace &place = stacks_.places()[index];
        const Excess e = stacks_.excess(index, seat);
        seats_[index] = seat;
        used_[seat.log.at()] = true;
        const double left = raise(place.left_top, e.left), right = raise(place.right_top, e.right);
        fill(at + 1, squares + left + right);
        raise(place.left_top, -e.left), raise(place.right_top, -e.right);
        used_[seat.log.at()] = false;
    }

    const Stacks &stacks_;
    std::vector<Seat> best_, seats_;
    std::vector<bool> used_;
    std::vector<std::size_t> order_;
    Indexed<double, RunningTop> tops_;
    double least_ = 0;
    long steps_ = 0;
};

} // namespace

std::optional<std::vector<Seat>> proven_best(const Stacks &stacks, std::vector<Seat> seats) {
    return Prover(stacks, std::move(seats)).run();
}

} // namespace roundlay
