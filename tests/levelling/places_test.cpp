// Which places a shell has for its logs, and what is done where a pile is small: worked out by hand.
#include "kernel/layout/lay_out.h"
#include "kernel/levelling/levelling.h"
#include "kernel/levelling/slivers.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

PileLog even_log(double length, double height) {
    return {"L", length, height, height, {}, {}};
}

void add(std::vector<PileLog> &pile, int count, const PileLog &log) {
    pile.insert(pile.end(), static_cast<std::size_t>(count), log);
}

std::vector<LogPlace> places_in(const Shell &shell, const std::vector<PileLog> &pile) {
    const auto found = log_places(shell, lay_out(shell), pile);
    INFO((std::holds_alternative<std::string>(found) ? std::get<std::string>(found) : ""));
    REQUIRE(std::holds_alternative<std::vector<LogPlace>>(found));
    return std::get<std::vector<LogPlace>>(found);
}

/// One wall, each log as long as it.
std::vector<LogPlace> one_wall(const std::vector<double> &lengths) {
    std::vector<LogPlace> all;
    for (std::size_t i = 0; i < lengths.size(); ++i)
        all.push_back({Index<WallPlace>(0), count_of(all) + 1, lengths[i], 1, Index<RunningTop>(0),
                       Index<RunningTop>(1)});
    return all;
}

} // namespace

TEST_CASE("Every wall has two tops of its own, one at either end") {
    std::vector<PileLog> pile;
    add(pile, 18, even_log(5200, 230));
    for (const LogPlace &place : places_in(test::plain_shell(), pile)) {
        CHECK(place.left_top == Index<RunningTop>(2 * place.wall.at()));
        CHECK(place.right_top == Index<RunningTop>(2 * place.wall.at() + 1));
    }
}

TEST_CASE("Logs between two windows lie on one another, and their errors add up") {
    Shell shell = test::plain_shell(); // wall A is 5 m long: 1 m, a window, 1.1 m, a window, 1.1 m
    shell.openings = {test::window("A", 1000, 0, 900, 640), test::window("A", 3000, 0, 900, 640)};
    std::vector<PileLog> pile;
    add(pile, 16, even_log(5200, 230));
    add(pile, 30, even_log(1200, 230));
    std::vector<LogPlace> islands;
    for (const LogPlace &place : places_in(shell, pile))
        if (place.wall.at() == 0 && place.first_piece == 2 && place.last_piece == 2) islands.push_back(place);
    REQUIRE(islands.size() >= 2);
    for (const LogPlace &place : islands) {
        CHECK(place.length == Approx(1100));
        CHECK(place.left_top == islands[0].left_top);
        CHECK(place.right_top == islands[0].right_top);
        REQUIRE(place.left_top);
        CHECK(place.left_top->at() >= 8); // the four walls' own come first
        CHECK(place.right_top == Index<RunningTop>(place.left_top->at() + 1));
    }
}

TEST_CASE("Of two rounds that the pile cannot both give in one, the longer is parted") {
    // 5 m by 4 m, 18 rounds. In two rounds each, a window leaves 4.1 m of wall A and 4.3 m of wall C. With 14
    // logs for the rounds that nothing parts and 2 of 4.5 m, two of the four can be had in one.
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 2000, 0, 900, 440), test::window("C", 2000, 0, 700, 440)};
    std::vector<PileLog> pile;
    add(pile, 14, even_log(5200, 230));
    add(pile, 2, even_log(4500, 230));
    add(pile, 8, even_log(2500, 230));
    int in_one = 0, parted = 0;
    for (const LogPlace &place : places_in(shell, pile)) {
        if (place.pieces < 2) continue;
        const bool whole = place.first_piece != place.last_piece;
        CHECK(place.wall.at() == (whole ? 0 : 2));
        ++(whole ? in_one : parted);
    }
    CHECK(in_one == 2);
    CHECK(parted == 4);
}

TEST_CASE("Without logs or without places there is nothing to level") {
    const std::string nothing = "there are no logs to level";
    CHECK(std::get<std::string>(level_logs({}, one_wall({6000, 6000}))) == nothing);
    CHECK(std::get<std::string>(level_logs({even_log(6000, 230)}, {})) == nothing);
}

TEST_CASE("Where logs as they come are too short for what is left, the longest takes the longest place") {
    // In turn 7 m would go into the place of 3 m, and 4 m would be left for that of 6 m.
    for (const int pairs : {1, 2, 3, 8}) {
        std::vector<double> lengths;
        std::vector<PileLog> pile;
        for (int i = 0; i < pairs; ++i) {
            lengths.insert(lengths.end(), {3000, 6000});
            pile.insert(pile.end(), {even_log(7000, 230), even_log(4000, 230)});
        }
        const auto levelled = std::get<Levelled>(level_logs(pile, one_wall(lengths)));
        std::vector<Index<PileLog>> used;
        for (std::size_t i = 0; i < lengths.size(); ++i) {
            used.push_back(levelled.before.seats[i].log);
            CHECK(pile[used.back().at()].length == lengths[i] + 1000);
        }
        std::ranges::sort(used);
        CHECK(std::ranges::adjacent_find(used) == used.end());
    }
}

TEST_CASE("No log that is left over would make the wall more level in the place of one that was taken") {
    // So many different logs that not every order can be tried. As they come the one of 300 mm is taken.
    std::vector<PileLog> pile = {even_log(6000, 300)};
    for (int i = 0; i < 12; ++i)
        pile.insert(pile.end(), {even_log(6000, 240 + 0.4 * i), even_log(6000, 240 - 0.4 * i)});
    pile.push_back(even_log(6000, 180));
    const std::vector<LogPlace> places = one_wall(std::vector<double>(24, 6000));
    const auto levelled = std::get<Levelled>(level_logs(pile, places));
    std::vector<Index<PileLog>> spare;
    for (const auto log : Indices<PileLog>(pile.size()))
        if (std::ranges::none_of(levelled.after.seats, [&](const Seat &s) { return s.log == log; }))
            spare.push_back(log);
    REQUIRE(spare.size() == 2);
    for (std::size_t place = 0; place < places.size(); ++place)
        for (const Index<PileLog> log : spare) {
            std::vector<Seat> seats = levelled.after.seats;
            seats[place].log = log;
            CHECK(arranged(pile, places, seats, levelled.log_height).squares >=
                  levelled.after.squares - 1e-3);
        }
}

TEST_CASE("A log that is left over is taken where it leaves no sliver over a window") {
    // Three logs of 217 with gaps of 20 end at 691, a hair over the window's top at 690; with one of 212 in
    // their place they end at 686, in the gap. 18 of 217 with four of 212 and four of 222 are 217 in the
    // mean.
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 2000, 460, 900, 230)};
    std::vector<PileLog> pile;
    add(pile, 18, even_log(5200, 217));
    add(pile, 4, even_log(5200, 212));
    add(pile, 4, even_log(5200, 222));
    Levelled l = std::get<Levelled>(level_logs(pile, places_in(shell, pile)));
    for (const Seat &seat : l.after.seats)
        REQUIRE(seat.log.at() < 18);
    shun_slivers(shell, pile, l);
    CHECK(l.slivers_of_most_level == 1);
    CHECK(l.slivers == 0);
}
