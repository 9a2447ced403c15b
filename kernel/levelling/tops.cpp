#include "kernel/levelling/tops.h"

#include <algorithm>
#include <utility>

namespace roundlay {

Tops::Tops(const Stacks &stacks, std::vector<Seat> seats)
    : stacks_(&stacks), seats_(std::move(seats)), tops_(stacks.tops()), left_(seats_.size()),
      right_(seats_.size()), squares_(stacks.tops()) {
    for (std::size_t i = 0; i < seats_.size(); ++i) {
        const LogPlace &place = stacks.places()[i];
        for (const bool right : {false, true}) {
            const auto top = right ? place.right_top : place.left_top;
            if (!top) continue;
            auto &rests = tops_[*top];
            (right ? right_ : left_)[i] = {top, rests.size()};
            rests.push_back({i, right, 0, 0});
        }
    }
    for (const auto top : tops_.indices())
        sum_up(top);
}

Excess Tops::change(std::size_t place, const Seat &seat) const {
    const Excess now = stacks_->excess(place, seats_[place]);
    const Excess then = stacks_->excess(place, seat);
    return {then.left - now.left, then.right - now.right};
}

/// A log laid anew moves all errors from its own up by as much: (e + by)^2 - e^2, summed.
double Tops::growth_at(const At &at, double by) const {
    if (!at.top) return 0;
    return 2 * by * rest(at).sum + rest(at).count * by * by;
}

/// What two changes to one top come to beyond each alone: 2 by_a by_b for every error over both.
double Tops::together(const At &a, double by_a, const At &b, double by_b) const {
    if (!a.top || a.top != b.top) return 0;
    return 2 * by_a * by_b * std::min(rest(a).count, rest(b).count);
}

double Tops::growth(std::size_t place, const Seat &seat) const {
    const Excess by = change(place, seat);
    return growth_at(left_[place], by.left) + growth_at(right_[place], by.right);
}

double Tops::growth(std::size_t a, const Seat &seat_a, std::size_t b, const Seat &seat_b) const {
    const Excess by_a = change(a, seat_a), by_b = change(b, seat_b);
    return growth(a, seat_a) + growth(b, seat_b) + together(left_[a], by_a.left, left_[b], by_b.left) +
           together(right_[a], by_a.right, right_[b], by_b.right);
}

void Tops::lay(std::size_t place, const Seat &seat) {
    seats_[place] = seat;
    for (const At &at : {left_[place], right_[place]})
        if (at.top) sum_up(*at.top);
}

void Tops::sum_up(Index<RunningTop> top) {
    std::vector<Rest> &rests = tops_[top];
    double error = 0, squares = 0;
    for (Rest &r : rests) {
        const Excess e = stacks_->excess(r.place, seats_[r.place]);
        error += r.right ? e.right : e.left;
        r.sum = error, r.count = 1;
        squares += error * error;
    }
    for (std::size_t i = rests.size(); i-- > 1;) {
        rests[i - 1].sum += rests[i].sum;
        rests[i - 1].count += rests[i].count;
    }
    total_ += squares - std::exchange(squares_[top], squares);
}

} // namespace roundlay
