#include "kernel/levelling/bounds.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace roundlay {

namespace {

/// An end beside an opening adds to no top.
Excess counted(const Stacks &stacks, std::size_t place, const Seat &seat) {
    Excess e = stacks.excess(place, seat);
    if (!stacks.places()[place].left_top) e.left = 0;
    if (!stacks.places()[place].right_top) e.right = 0;
    return e;
}

/// The mildest that a log can be, over all places it fits.
LevelBounds mildest(const Stacks &stacks, Index<PileLog> log) {
    constexpr double unknown = std::numeric_limits<double>::infinity();
    LevelBounds least{unknown, unknown};
    for (std::size_t place = 0; place < stacks.places().size(); ++place) {
        if (!stacks.fits(log, place)) continue;
        for (const LogEnd butt : {LogEnd::left, LogEnd::right}) {
            const Excess e = counted(stacks, place, {log, butt});
            least.squares = std::min(least.squares, (e.left * e.left + e.right * e.right) / 4);
            least.worst = std::min(least.worst, std::max(std::abs(e.left), std::abs(e.right)) / 2);
        }
    }
    return least;
}

} // namespace

LevelBounds level_bounds(const Stacks &stacks) {
    std::vector<double> squares, worst;
    for (const auto log : stacks.logs()) {
        const LevelBounds least = mildest(stacks, log);
        squares.push_back(least.squares);
        worst.push_back(least.worst);
    }
    std::sort(squares.begin(), squares.end());
    std::sort(worst.begin(), worst.end());
    LevelBounds bounds;
    const std::size_t needed = stacks.places().size(); // at least so many fit somewhere, or nothing holds
    for (std::size_t i = 0; i < needed; ++i)
        bounds.squares += squares[i];
    bounds.worst = needed ? worst[needed - 1] : 0;
    return bounds;
}

} // namespace roundlay
