// Piles and shells to level, and what the best arrangement of small ones is.
#pragma once

#include "kernel/layout/lay_out.h"
#include "kernel/levelling/levelling.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>

namespace roundlay::test {

inline double drawn(int low, int high) {
    return *rc::gen::inRange(low, high);
}

inline std::vector<PileLog> any_pile(std::size_t count, int shortest) {
    std::vector<PileLog> pile;
    for (std::size_t i = 0; i < count; ++i) {
        const double butt = drawn(190, 290);
        pile.push_back(
            {"log " + std::to_string(i), drawn(shortest, 9000), butt, butt - drawn(0, 60), {}, {}});
    }
    return pile;
}

inline void check_is_an_arrangement(const std::vector<PileLog> &pile, const Levelled &l,
                                    const Arrangement &a) {
    std::vector<Index<PileLog>> used;
    RC_ASSERT(a.seats.size() == l.places.size());
    for (std::size_t i = 0; i < a.seats.size(); ++i) {
        used.push_back(a.seats[i].log);
        RC_ASSERT(pile[a.seats[i].log.at()].length >= l.places[i].length);
    }
    std::sort(used.begin(), used.end());
    RC_ASSERT(std::adjacent_find(used.begin(), used.end()) == used.end());
}

inline std::vector<LogPlace> places_in(const Shell &shell, const std::vector<PileLog> &pile) {
    return std::get<std::vector<LogPlace>>(log_places(shell, lay_out(shell), pile));
}

} // namespace roundlay::test
