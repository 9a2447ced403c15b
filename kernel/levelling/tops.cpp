#include "kernel/levelling/tops.h"

#include <utility>

namespace roundlay {

namespace {

/// A log laid anew moves the tops of all rounds from its own up by as much: so many errors, of this sum.
double moved(double by, double sum, double count) {
    return 2 * by * sum + count * by * by;
}

} // namespace

Tops::Tops(const Stacks &stacks, std::vector<Seat> seats)
    : stacks_(&stacks), seats_(std::move(seats)), above_(seats_.size()), squares_(stacks.walls()) {
    for (std::size_t wall = 0; wall < squares_.size(); ++wall)
        sum_up(wall);
}

Excess Tops::change(std::size_t place, const Seat &seat) const {
    const Excess now = stacks_->excess(static_cast<int>(place), seats_[place]);
    const Excess then = stacks_->excess(static_cast<int>(place), seat);
    return {then.left - now.left, then.right - now.right};
}

double Tops::growth(std::size_t place, const Seat &seat) const {
    const Excess by = change(place, seat);
    const Above &above = above_[place];
    return moved(by.left, above.left, above.count) + moved(by.right, above.right, above.count);
}

double Tops::growth(std::size_t a, const Seat &seat_a, std::size_t b, const Seat &seat_b) const {
    if (wall_of(a) != wall_of(b)) return growth(a, seat_a) + growth(b, seat_b);
    if (above_[a].count < above_[b].count) return growth(b, seat_b, a, seat_a);
    // b lies above a: between them only a's change counts, above b both.
    const Excess by_a = change(a, seat_a), by_b = change(b, seat_b);
    const Above &low = above_[a], &high = above_[b];
    const double between = low.count - high.count;
    return moved(by_a.left, low.left - high.left, between) +
           moved(by_a.right, low.right - high.right, between) +
           moved(by_a.left + by_b.left, high.left, high.count) +
           moved(by_a.right + by_b.right, high.right, high.count);
}

void Tops::lay(std::size_t place, const Seat &seat) {
    seats_[place] = seat;
    sum_up(wall_of(place));
}

void Tops::sum_up(std::size_t wall) {
    const std::vector<int> &column = stacks_->column(wall);
    double left = 0, right = 0, squares = 0;
    for (const int i : column) {
        const auto place = static_cast<std::size_t>(i);
        const Excess e = stacks_->excess(i, seats_[place]);
        left += e.left, right += e.right;
        above_[place] = {left, right, 1};
        squares += left * left + right * right;
    }
    for (std::size_t i = column.size(); i-- > 1;) {
        const Above &upper = above_[static_cast<std::size_t>(column[i])];
        Above &lower = above_[static_cast<std::size_t>(column[i - 1])];
        lower = {lower.left + upper.left, lower.right + upper.right, lower.count + upper.count};
    }
    total_ += squares - std::exchange(squares_[wall], squares);
}

} // namespace roundlay
