#include "kernel/levelling/search.h"

#include <numeric>

namespace roundlay {

namespace {

constexpr long most_steps = 3'000'000; // about a second

/// Fills the places wall by wall from the sill up and turns back where the errors so far are no better than
/// the best arrangement's.
class Prover {
  public:
    Prover(const Stacks &stacks, std::vector<Seat> best)
        : stacks_(stacks), best_(std::move(best)), seats_(best_.size()), used_(stacks.pile().size()) {
        for (std::size_t wall = 0; wall < stacks.walls(); ++wall) {
            least_ += stacks.squares(wall, best_);
            for (const int place : stacks.column(wall))
                order_.push_back(place);
        }
    }

    std::optional<std::vector<Seat>> run() {
        fill(0, {}, 0);
        if (steps_ > most_steps) return {};
        return best_;
    }

  private:
    bool starts_wall(std::size_t at) const {
        const auto &places = stacks_.places();
        return at == 0 || places[static_cast<std::size_t>(order_[at])].wall !=
                              places[static_cast<std::size_t>(order_[at - 1])].wall;
    }

    void fill(std::size_t at, Excess so_far, double squares) {
        if (++steps_ > most_steps || squares >= least_) return;
        if (at == order_.size()) {
            best_ = seats_, least_ = squares;
            return;
        }
        if (starts_wall(at)) so_far = {};
        for (int log = 0; log < static_cast<int>(used_.size()); ++log)
            if (!used_[static_cast<std::size_t>(log)] && stacks_.fits(log, order_[at]))
                for (const LogEnd butt : {LogEnd::left, LogEnd::right})
                    lay({log, butt}, at, so_far, squares);
    }

    void lay(Seat seat, std::size_t at, Excess so_far, double squares) {
        const int place = order_[at];
        const Excess e = stacks_.excess(place, seat);
        so_far.left += e.left, so_far.right += e.right;
        seats_[static_cast<std::size_t>(place)] = seat;
        used_[static_cast<std::size_t>(seat.log)] = true;
        fill(at + 1, so_far, squares + so_far.left * so_far.left + so_far.right * so_far.right);
        used_[static_cast<std::size_t>(seat.log)] = false;
    }

    const Stacks &stacks_;
    std::vector<Seat> best_, seats_;
    std::vector<bool> used_;
    std::vector<int> order_;
    double least_ = 0;
    long steps_ = 0;
};

} // namespace

std::optional<std::vector<Seat>> proven_best(const Stacks &stacks, std::vector<Seat> seats) {
    return Prover(stacks, std::move(seats)).run();
}

} // namespace roundlay
