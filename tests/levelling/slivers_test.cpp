// Of arrangements that are as level, those that leave no sliver of a log beside an opening.
#include "kernel/layout/lay_out.h"
#include "kernel/levelling/slivers.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <set>

using namespace roundlay;

namespace {

double between(int low, int high) {
    return *rc::gen::inRange(low, high);
}

std::vector<LogPlace> places_in(const Shell &shell, const std::vector<PileLog> &pile) {
    return std::get<std::vector<LogPlace>>(log_places(shell, lay_out(shell), pile));
}

/// Each log once, and long enough.
bool is_an_arrangement(const std::vector<PileLog> &pile, const Levelled &l) {
    std::set<Index<PileLog>> used;
    for (std::size_t i = 0; i < l.after.seats.size(); ++i) {
        const Index<PileLog> log = l.after.seats[i].log;
        if (!used.insert(log).second || pile[log.at()].length < l.places[i].length) return false;
    }
    return used.size() == l.places.size();
}

/// Rounds of 230 mm with gaps of 20: the window's sill lies on the seam at 460 mm, its top at 690.
Shell with_window() {
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 2000, 460, 900, 230)};
    return shell;
}

/// Logs of about 217 mm: three of them and two gaps end 691 mm up, a hair over the window.
std::vector<PileLog> hair_over_window(const std::vector<std::pair<double, double>> &ends) {
    std::vector<PileLog> pile;
    for (const auto &[butt, tip] : ends)
        pile.push_back({"L" + std::to_string(pile.size()), 5200, butt, tip, {}, {}});
    return pile;
}

/// As the check counts them, in the shell as it would be built.
std::ptrdiff_t slivers_in(const Shell &shell, const std::vector<PileLog> &pile, Levelled l,
                          const Arrangement &arrangement) {
    l.after = arrangement;
    Shell stated = shell;
    stated.own_logs = own_logs(lay_out(shell), shell.units, pile, l);
    const Layout layout = lay_out(stated);
    RC_ASSERT_FALSE(has_errors(layout.findings));
    return std::ranges::count_if(layout.findings,
                                 [](const Finding &f) { return f.code == "thin-wood-at-opening"; });
}

} // namespace

TEST_CASE("Of arrangements that are as level, one is taken that leaves no sliver over a window") {
    const Shell shell = with_window();
    const auto pile =
        hair_over_window({{220, 218}, {214, 212}, {222, 220}, {220, 218}, {220, 218}, {222, 222}, {222, 222},
                          {218, 218}, {214, 210}, {218, 214}, {222, 222}, {218, 218}, {214, 210}, {218, 216},
                          {222, 222}, {218, 216}, {218, 214}, {216, 212}, {220, 218}, {222, 220}});
    Levelled l = std::get<Levelled>(level_logs(pile, places_in(shell, pile)));
    REQUIRE(slivers_in(shell, pile, l, l.after) == 1);
    shun_slivers(shell, pile, l);
    CHECK(l.slivers_of_most_level == 1);
    CHECK(l.slivers == 0);
    REQUIRE(l.most_level);
    CHECK(slivers_in(shell, pile, l, l.after) == 0);
    CHECK(l.after.worst <= 10); // what a plate takes up: common practice, no source
    CHECK(l.after.squares >= l.most_level->squares);
}

TEST_CASE("Where every arrangement leaves a sliver the most level one stays") {
    const Shell shell = with_window();
    const auto pile = hair_over_window(std::vector<std::pair<double, double>>(20, {217, 217}));
    Levelled l = std::get<Levelled>(level_logs(pile, places_in(shell, pile)));
    const std::vector<Seat> seats = l.after.seats;
    shun_slivers(shell, pile, l);
    CHECK(l.slivers == 1);
    CHECK_FALSE(l.most_level);
    CHECK(l.after.seats == seats);
}

TEST_CASE("On any pile slivers only become fewer, and walls no less level than a plate takes up") {
    static int shunned = 0, all_gone = 0, stayed = 0;
    CHECK(rc::check([] {
        Shell shell = test::plain_shell();
        // Heads near the top of the third log, which logs of 205 to 225 mm bring to 655 to 715 mm; sills
        // anywhere.
        shell.openings = {test::window("A", between(700, 1500), 460, 900, between(200, 240)),
                          test::window("C", between(1600, 3000), between(200, 500), 700, 220)};
        RC_PRE(!has_errors(lay_out(shell).findings));
        std::vector<std::pair<double, double>> ends;
        for (int i = 0; i < 26; ++i) {
            const double butt = between(205, 225);
            ends.emplace_back(butt, butt - between(0, 6));
        }
        const auto pile = hair_over_window(ends);
        const auto found = log_places(shell, lay_out(shell), pile);
        RC_PRE(std::holds_alternative<std::vector<LogPlace>>(found));
        Levelled l = std::get<Levelled>(level_logs(pile, std::get<std::vector<LogPlace>>(found)));
        const Arrangement most_level = l.after;
        shun_slivers(shell, pile, l);
        RC_ASSERT(l.slivers_of_most_level == slivers_in(shell, pile, l, most_level));
        RC_ASSERT(l.slivers == slivers_in(shell, pile, l, l.after));
        RC_ASSERT(l.most_level.has_value() == (l.parted_otherwise || l.slivers < l.slivers_of_most_level));
        RC_ASSERT(l.after.worst <= std::max(10.0, most_level.worst));
        RC_ASSERT(is_an_arrangement(pile, l));
        shunned += l.slivers < l.slivers_of_most_level, all_gone += l.most_level && l.slivers == 0;
        stayed += l.slivers > 0;
    }));
    CHECK(shunned > 2);
    CHECK(all_gone > 0);
    CHECK(stayed > 0);
}
