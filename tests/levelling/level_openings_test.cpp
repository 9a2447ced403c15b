// Logs that doors part: both sides from one log of the pile, or from two.
#include "kernel/layout/lay_out.h"
#include "kernel/levelling/levelling.h"
#include "tests/levelling/piles.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <numeric>

using namespace roundlay;
using namespace roundlay::test;

namespace {

/// 8 m by 5 m, a door 1 m wide in the middle of each long wall, 10 rounds.
Shell with_doors() {
    Shell shell = test::plain_shell();
    for (const std::size_t wall : {0u, 2u})
        shell.walls[wall].length = Length::metres(8);
    for (const std::size_t wall : {1u, 3u})
        shell.walls[wall].length = Length::metres(5);
    shell.rounds.count = 10;
    shell.rounds.pitch = Length::mm(240);
    shell.openings = {test::window("A", 3500, 0, 1000, 2000), test::window("C", 3500, 0, 1000, 2000)};
    return shell;
}

std::vector<PileLog> pile_of(int long_ones, int short_ones) {
    std::vector<PileLog> pile;
    for (int i = 0; i < long_ones + short_ones; ++i)
        pile.push_back(
            {"L" + std::to_string(i), i < long_ones ? 8200.0 : 5200.0, 225.0 + i % 7, 215.0 + i % 5, {}, {}});
    return pile;
}

} // namespace

TEST_CASE("Logs beside a door need only the pieces' lengths") {
    // By hand: the door is 2 m high and takes 8 rounds and a part of the ninth, whose log spans it: 2 rounds
    // of 2 long walls and nothing else are 8 m long.
    const Shell shell = with_doors();
    const auto pile = pile_of(4, 60);
    const auto all = places_in(shell, pile);
    const auto long_ones = std::count_if(all.begin(), all.end(), [](auto &p) { return p.length > 5200; });
    CHECK(long_ones == 4);
    const auto levelled = std::get<Levelled>(level_logs(pile, all));
    const auto logs = own_logs(lay_out(shell), UnitSystem::metric, pile, levelled);
    Shell stated = shell;
    stated.own_logs = logs;
    const Layout layout = lay_out(stated);
    CHECK_FALSE(has_errors(layout.findings));
    std::vector<std::string> marks;
    for (const Piece &p : layout.pieces) {
        CHECK_FALSE(p.mark.empty());
        const auto log = std::find_if(pile.begin(), pile.end(), [&](auto &l) { return l.mark == p.mark; });
        REQUIRE(log != pile.end());
        CHECK(log->length >= p.blank.length - 1e-6);
        marks.push_back(p.mark);
    }
    std::sort(marks.begin(), marks.end());
    CHECK(std::adjacent_find(marks.begin(), marks.end()) ==
          marks.end()); // short logs: each piece from its own
}

TEST_CASE("Where the pile has few logs but long ones, both sides of a door come from one") {
    const auto all = places_in(with_doors(), pile_of(42, 0));
    CHECK(all.size() == 42); // 4 walls of 10 rounds, two of them closed with a half log more
    for (const LogPlace &place : all)
        if (place.pieces == 2) CHECK(place.length == Approx(7000 + saw_cut));
    const auto none = log_places(with_doors(), lay_out(with_doors()), pile_of(4, 40));
    REQUIRE(std::holds_alternative<std::string>(none));
    CHECK_THAT(std::get<std::string>(none), ContainsSubstring("missing where each round is one log: ") &&
                                                ContainsSubstring(" of 7010 mm or longer") &&
                                                ContainsSubstring("where each piece is a log of its own: "));
}

namespace {

/// Does any choice of rounds to part go? Every one is tried.
bool any_parting_goes(const std::vector<std::vector<double>> &rounds, const std::vector<PileLog> &pile) {
    std::vector<double> have;
    for (const PileLog &log : pile)
        have.push_back(log.length);
    for (unsigned parted = 0; parted < 1u << rounds.size(); ++parted) {
        std::vector<double> need;
        for (std::size_t r = 0; r < rounds.size(); ++r) {
            if (parted >> r & 1) {
                need.insert(need.end(), rounds[r].begin(), rounds[r].end());
                continue;
            }
            double whole = saw_cut * static_cast<double>(rounds[r].size() - 1);
            for (const double length : rounds[r])
                whole += length;
            need.push_back(whole);
        }
        if (missing_logs(need, have, UnitSystem::metric).empty()) return true;
    }
    return false;
}

/// Lengths of the pieces of each round of each wall.
std::vector<std::vector<double>> pieces_by_round(const Layout &layout) {
    std::map<std::pair<int, Index<WallPlace>>, std::vector<double>> rounds;
    for (const Piece &p : layout.pieces)
        rounds[{p.round, p.wall}].push_back(p.blank.length);
    std::vector<std::vector<double>> all;
    for (auto &[place, lengths] : rounds)
        all.push_back(lengths);
    return all;
}

} // namespace

TEST_CASE("A pile is refused only where no way of parting rounds at openings goes") {
    static int went = 0, refused = 0;
    test::ThrownAway thrown({"openings-too-close", "opening-cuts-corner"});
    CHECK(rc::check([&] {
        Shell shell = test::plain_shell();
        shell.rounds.count = 3;
        shell.openings = {test::window("A", drawn(800, 1500), 0, 900, 640),
                          test::window("C", drawn(1600, 3000), 0, 700, 640)};
        const Layout layout = lay_out(shell);
        thrown.discard_refused(layout.findings);
        const auto rounds = pieces_by_round(layout);
        std::vector<PileLog> pile;
        for (std::size_t i = rounds.size() + static_cast<std::size_t>(*rc::gen::inRange(0, 9)); i > 0; --i)
            pile.push_back({"a", i % 4 != 0 ? 5100 : 10 * drawn(60, 520), 240, 220, {}, {}});
        const bool goes = std::holds_alternative<std::vector<LogPlace>>(log_places(shell, layout, pile));
        RC_ASSERT(goes == any_parting_goes(rounds, pile));
        ++(goes ? went : refused);
    }));
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
    CHECK(went > 5);
    CHECK(refused > 5);
}

TEST_CASE("The best arrangement is found beside openings too") {
    CHECK(rc::check([] {
        std::vector<LogPlace> all;
        for (int round = 1; round <= 2; ++round) {
            const Index<WallPlace> wall;
            const Index<RunningTop> left(0), right(1), island_left(2), island_right(3);
            all.push_back({wall, round, 2000, 1, left, {}, 1, 1, 3, 0});
            all.push_back({wall, round, 500, 1, island_left, island_right, 2, 2, 3, 0});
            all.push_back({wall, round, 2000, 1, {}, right, 3, 3, 3, 0});
        }
        all.resize(static_cast<std::size_t>(*rc::gen::inRange(2, 6)));
        const auto pile = any_pile(all.size(), 6000);
        const auto l = std::get<Levelled>(level_logs(pile, all));
        check_is_an_arrangement(pile, l, l.after);
        RC_ASSERT(l.proven);
        RC_ASSERT(l.after.squares >= l.least_squares * (1 - 1e-12) - 1e-9);
        std::vector<int> order(pile.size());
        std::iota(order.begin(), order.end(), 0);
        double least = 1e300;
        do
            for (unsigned turned = 0; turned < 1u << all.size(); ++turned) {
                double squares = 0, top[4] = {};
                for (std::size_t i = 0; i < all.size(); ++i) {
                    const PileLog &log = pile[static_cast<std::size_t>(order[i])];
                    double ends[2] = {log.butt_height, log.butt_height + (log.tip_height - log.butt_height) *
                                                                             all[i].length / log.length};
                    if (turned >> i & 1) std::swap(ends[0], ends[1]);
                    const std::optional<Index<RunningTop>> tops[2] = {all[i].left_top, all[i].right_top};
                    for (int end = 0; end < 2; ++end)
                        if (tops[end])
                            top[tops[end]->at()] += ends[end] - l.log_height,
                                squares += top[tops[end]->at()] * top[tops[end]->at()];
                }
                least = std::min(least, squares);
            }
        while (std::next_permutation(order.begin(), order.end()));
        RC_ASSERT(std::abs(l.after.squares - least) <= 1e-6 * (1 + least));
    }));
}
