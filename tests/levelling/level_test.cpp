#include "kernel/layout/lay_out.h"
#include "kernel/levelling/levelling.h"
#include "tests/levelling/piles.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <numeric>

using namespace roundlay;
using namespace roundlay::test;

namespace {

std::vector<LogPlace> places(int walls, int rounds, double length) {
    std::vector<LogPlace> all;
    for (int round = 1; round <= rounds; ++round)
        for (int wall = 0; wall < walls; ++wall)
            all.push_back({Index<WallPlace>(wall), round, length, round == 1 && wall % 2 ? 0.5 : 1,
                           Index<RunningTop>(2 * wall), Index<RunningTop>(2 * wall + 1)});
    return all;
}

/// Every order of the logs and every way of turning them: a slow way that shares nothing with the search.
double brute_force(const std::vector<PileLog> &pile, const std::vector<LogPlace> &all, double log_height) {
    std::vector<int> order(pile.size());
    std::iota(order.begin(), order.end(), 0);
    double least = 1e300;
    do {
        for (unsigned turned = 0; turned < 1u << all.size(); ++turned) {
            double squares = 0, top[8][2] = {};
            for (std::size_t i = 0; i < all.size(); ++i) {
                const PileLog &log = pile[static_cast<std::size_t>(order[i])];
                if (log.length < all[i].length) squares = 1e300;
                const double tip =
                    log.butt_height + (log.tip_height - log.butt_height) * all[i].length / log.length;
                const double ends[2] = {log.butt_height, tip};
                for (int end = 0; end < 2; ++end) {
                    double &e = top[all[i].wall.at()][end];
                    e += all[i].share * (ends[(turned >> i & 1) ? 1 - end : end] - log_height);
                    squares += e * e;
                }
            }
            least = std::min(least, squares);
        }
    } while (std::next_permutation(order.begin(), order.end()));
    return least;
}

} // namespace

TEST_CASE("On small piles no order of the logs is better, spare ones and short ones included") {
    CHECK(rc::check([] {
        const auto all = places(*rc::gen::inRange(1, 3), *rc::gen::inRange(2, 4), 6000);
        const auto pile = any_pile(all.size() + static_cast<std::size_t>(*rc::gen::inRange(0, 2)), 5800);
        const auto result = level_logs(pile, all);
        const auto *levelled = std::get_if<Levelled>(&result);
        if (!levelled) { // then too many are too short, counted here in another way
            const auto fit =
                std::count_if(pile.begin(), pile.end(), [](auto &l) { return l.length >= 6000; });
            RC_ASSERT(fit < static_cast<std::ptrdiff_t>(all.size()));
            return;
        }
        check_is_an_arrangement(pile, *levelled, levelled->after);
        RC_ASSERT(levelled->proven);
        const double least = brute_force(pile, all, levelled->log_height);
        RC_ASSERT(std::abs(levelled->after.squares - least) <= 1e-6 * (1 + least));
    }));
}

TEST_CASE("On any pile the arrangement is one, no worse than before, and above its bounds") {
    CHECK(rc::check([] {
        const auto all = places(*rc::gen::inRange(1, 5), *rc::gen::inRange(1, 9), 6000);
        const auto pile = any_pile(all.size() + static_cast<std::size_t>(*rc::gen::inRange(0, 4)), 6000);
        const auto l = std::get<Levelled>(level_logs(pile, all));
        check_is_an_arrangement(pile, l, l.before);
        check_is_an_arrangement(pile, l, l.after);
        RC_ASSERT(l.after.squares <= l.before.squares * (1 + 1e-12));
        RC_ASSERT(l.after.squares >= l.least_squares * (1 - 1e-12) - 1e-9);
        RC_ASSERT(l.after.worst >= l.least_worst - 1e-9);
        RC_ASSERT(l.before.worst >= l.least_worst - 1e-9);
        const Arrangement again = arranged(pile, all, l.after.seats, l.log_height);
        RC_ASSERT(std::abs(again.squares - l.after.squares) <= 1e-9 * (1 + again.squares));
    }));
}

TEST_CASE("Two logs of one taper, laid butt over tip, are level again") {
    const std::vector<PileLog> pile = {{"a", 6000, 260, 220, {}, {}}, {"b", 6000, 260, 220, {}, {}}};
    const auto l = std::get<Levelled>(level_logs(pile, places(1, 2, 6000)));
    CHECK(l.log_height == Approx(240));
    CHECK(l.after.seats[0].butt != l.after.seats[1].butt);
    CHECK(std::abs(l.after.errors[0].left) == Approx(20)); // one log alone cannot be level
    CHECK(l.after.errors[1].left == Approx(0).margin(1e-9));
    CHECK(l.after.errors[1].right == Approx(0).margin(1e-9));
    CHECK(l.least_worst == Approx(10));
}

TEST_CASE("A log cut shorter than it is has its end on the line from butt to tip") {
    CHECK(tip_height_at({"a", 8000, 260, 220, {}, {}}, 6000) == Approx(230));
    CHECK(tip_width_at({"a", 8000, 260, 220, 250.0, 210.0}, 6000) == Approx(220));
}

TEST_CASE("A pile that is too small or too short is refused with what is missing") {
    const auto all = places(2, 3, 6000);
    CHECK(std::get<std::string>(level_logs({{"a", 7000, 240, 220, {}, {}}}, all)) ==
          "the pile has 1 log and the shell needs 6; missing: 5 of 6000 mm or longer");
    std::vector<PileLog> pile(6, {"a", 5000, 240, 220, {}, {}});
    pile[0].length = 6000;
    CHECK(std::get<std::string>(level_logs(pile, all)) ==
          "the pile has 6 logs and the shell needs 6; missing: 5 of 6000 mm or longer");
    CHECK_THAT(std::get<std::string>(level_logs(pile, all, UnitSystem::imperial)),
               ContainsSubstring("5 of 19' 9\" or longer"));
    // By hand: 8 m reaches 7.5, 6 m reaches 5.995, 5 m reaches 3; nothing is left for 7 m and 3 m.
    CHECK(missing_logs({7500, 7000, 5995, 3000, 3000}, {8000, 6000, 5000}, UnitSystem::metric) ==
          "1 of 7000 mm or longer, 1 of 3000 mm or longer");
}

namespace {

/// How many of the needs go unmet at the least, by trying every way of giving logs out.
std::size_t fewest_missing(const std::vector<double> &need, const std::vector<double> &have, std::size_t at,
                           unsigned used) {
    if (at == need.size()) return 0;
    std::size_t least = 1 + fewest_missing(need, have, at + 1, used);
    for (std::size_t i = 0; i < have.size(); ++i)
        if (!(used >> i & 1) && have[i] >= need[at])
            least = std::min(least, fewest_missing(need, have, at + 1, used | 1u << i));
    return least;
}

} // namespace

TEST_CASE("No fewer logs are named missing than must be, and with them the pile is enough") {
    CHECK(rc::check([] {
        std::vector<double> need, have;
        for (int i = *rc::gen::inRange(1, 6); i > 0; --i)
            need.push_back(10 * drawn(300, 900));
        for (int i = *rc::gen::inRange(0, 6); i > 0; --i)
            have.push_back(10 * drawn(300, 900));
        const std::string text = missing_logs(need, have, UnitSystem::metric);
        std::size_t named = 0;
        for (std::size_t at = 0; at < text.size();
             at = text.find(", ", at) == std::string::npos ? text.size() : text.find(", ", at) + 2) {
            const auto count = static_cast<std::size_t>(std::stoi(text.substr(at)));
            const double length = std::stod(text.substr(text.find(" of ", at) + 4));
            named += count;
            have.insert(have.end(), count, length);
        }
        const auto given = have.size() - named;
        RC_ASSERT(named ==
                  fewest_missing(need, {have.begin(), have.begin() + static_cast<long>(given)}, 0, 0));
        RC_ASSERT(missing_logs(need, have, UnitSystem::metric).empty());
    }));
}

namespace {

/// Logs that are long enough for anything.
std::vector<PileLog> any_length(int count) {
    return std::vector<PileLog>(static_cast<std::size_t>(count), {"a", 30'000, 240, 220, {}, {}});
}

/// A half log too thin for a tail stands between the walls.
double length_of(const Layout &layout, const LogPlace &place) {
    const WallPlace &wall = layout.walls[place.wall];
    const bool between = place.share < 1;
    return wall.length - (between ? 2 * wall.thickness : 0);
}

} // namespace

TEST_CASE("Every log of a shell has its place, from end to end") {
    const Shell shell = test::plain_shell();
    const Layout layout = lay_out(shell);
    const auto all = std::get<std::vector<LogPlace>>(log_places(shell, layout, any_length(18)));
    CHECK(all.front().round == 1);
    for (const LogPlace &place : all)
        CHECK(place.length == Approx(length_of(layout, place)));
    const auto halves = std::count_if(all.begin(), all.end(), [](auto &p) { return p.share == 0.5; });
    CHECK(halves == 4); // two walls start with a half log and end with one
    CHECK(all.size() == 4 * 4 + 2);
}

TEST_CASE("A half log is stated as the half that it is") {
    const Shell shell = test::plain_shell(); // logs of 210 mm, gaps of 20
    const Layout layout = lay_out(shell);
    const std::vector<PileLog> pile(18, {"a", 9000, 240, 240, {}, {}});
    const auto levelled = std::get<Levelled>(level_logs(pile, places_in(shell, pile)));
    Shell stated = shell;
    stated.own_logs = own_logs(layout, UnitSystem::metric, pile, levelled);
    for (const OwnLog &log : stated.own_logs)
        if (log.wall == "B" && log.round == 1)
            CHECK(log.sizes.butt_height == Length::mm(110)); // (240 - 20) / 2
    const Layout stands = lay_out(stated);
    for (const WallHeights &wall : stands.heights)
        CHECK(wall.top == Approx(4 * 240 + 3 * 20)); // all walls end level
}
