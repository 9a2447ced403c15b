#include "kernel/levelling/search.h"

#include <algorithm>
#include <numeric>

namespace roundlay {

namespace {

LogEnd changing(int round) {
    return round % 2 ? LogEnd::left : LogEnd::right;
}

std::optional<std::vector<Seat>> in_turn(const Stacks &stacks) {
    std::vector<Seat> seats;
    std::vector<bool> used(stacks.pile().size());
    for (std::size_t place = 0; place < stacks.places().size(); ++place) {
        std::size_t log = 0;
        while (log < used.size() &&
               (used[log] || !stacks.fits(static_cast<int>(log), static_cast<int>(place))))
            ++log;
        if (log == used.size()) return {};
        used[log] = true;
        seats.push_back({static_cast<int>(log), changing(stacks.places()[place].round)});
    }
    return seats;
}

std::vector<int> by_length(std::size_t count, auto length) {
    std::vector<int> order(count);
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return length(a) > length(b); });
    return order;
}

std::optional<std::vector<Seat>> longest_first(const Stacks &stacks) {
    const auto log_length = [&](int i) { return stacks.pile()[static_cast<std::size_t>(i)].length; };
    const auto place_length = [&](int i) { return stacks.places()[static_cast<std::size_t>(i)].length; };
    const std::vector<int> logs = by_length(stacks.pile().size(), log_length);
    const std::vector<int> places = by_length(stacks.places().size(), place_length);
    if (logs.size() < places.size()) return {};
    std::vector<Seat> seats(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto place = static_cast<std::size_t>(places[i]);
        if (!stacks.fits(logs[i], places[i])) return {};
        seats[place] = {logs[i], changing(stacks.places()[place].round)};
    }
    return seats;
}

} // namespace

std::optional<std::vector<Seat>> as_they_come(const Stacks &stacks) {
    if (auto seats = in_turn(stacks)) return seats;
    return longest_first(stacks);
}

} // namespace roundlay
