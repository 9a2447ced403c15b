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
        const auto logs = stacks.logs();
        const auto log =
            std::ranges::find_if(logs, [&](const auto i) { return !used[i.at()] && stacks.fits(i, place); });
        if (log == logs.end()) return {};
        used[(*log).at()] = true;
        seats.push_back({*log, changing(stacks.places()[place].round)});
    }
    return seats;
}

std::vector<std::size_t> by_length(std::size_t count, auto length) {
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return length(a) > length(b); });
    return order;
}

std::optional<std::vector<Seat>> longest_first(const Stacks &stacks) {
    const auto log_length = [&](std::size_t i) { return stacks.pile()[i].length; };
    const auto place_length = [&](std::size_t i) { return stacks.places()[i].length; };
    const std::vector<std::size_t> logs = by_length(stacks.pile().size(), log_length);
    const std::vector<std::size_t> places = by_length(stacks.places().size(), place_length);
    if (logs.size() < places.size()) return {};
    std::vector<Seat> seats(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        const std::size_t place = places[i];
        const Index<PileLog> log(logs[i]);
        if (!stacks.fits(log, place)) return {};
        seats[place] = {log, changing(stacks.places()[place].round)};
    }
    return seats;
}

} // namespace

std::optional<std::vector<Seat>> as_they_come(const Stacks &stacks) {
    if (auto seats = in_turn(stacks)) return seats;
    return longest_first(stacks);
}

} // namespace roundlay
