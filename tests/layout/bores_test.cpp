// Bores that a person states: where they cannot go, and the place that is offered instead.
#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <regex>

using namespace roundlay;
using test::rod;
using test::step;

namespace {

const Finding *refusal(const Findings &findings) {
    const auto it = std::find_if(findings.begin(), findings.end(),
                                 [](const Finding &f) { return f.code == "bore-misses-log"; });
    return it == findings.end() ? nullptr : &*it;
}

/// "…; 300 mm from the left would do", "…; from round 1 to round 2 it would do there, or 300 mm from the
/// left"
std::optional<Length> offered(const std::string &words) {
    static const std::regex place("; (?:from round .* it would do there, or )?([0-9]+) mm from the left");
    std::smatch found;
    if (!std::regex_search(words, found, place)) return {};
    return Length::mm(std::stod(found[1]));
}

/// 7 m long with a partition, a window and a door in the wall that is bored.
Shell parted() {
    Shell shell = test::plain_shell();
    shell.walls[0].length = shell.walls[2].length = Length::mm(7000);
    Partition partition = test::partition("P", "A", Length::mm(*rc::gen::inRange(1500, 2500)), "C");
    partition.heading = shell.walls[1].heading;
    shell.partitions = {partition};
    shell.openings = {test::window("A", 4000, 400, *rc::gen::inRange(300, 900), 300)};
    return shell;
}

} // namespace

TEST_CASE("Where a rod finds no whole log, the place that is offered takes it") {
    int offers = 0;
    CHECK(rc::check([&] {
        Shell shell = parted();
        const double x = *rc::gen::inRange(0, 7000), diameter = *rc::gen::inRange(12, 60);
        shell.bores = {rod("A", x, diameter)};
        const Layout layout = lay_out(shell);
        const Finding *refused = refusal(layout.findings);
        if (!refused) {
            RC_ASSERT(!has_errors(layout.findings));
            return;
        }
        const std::optional<Length> other = offered(test::words({*refused}));
        RC_ASSERT(other.has_value()); // 7 m of wall have one
        ++offers;
        shell.bores[0].from_left = *other;
        const Layout mended = lay_out(shell);
        if (const Finding *again = refusal(mended.findings)) RC_FAIL(test::words({*refused, *again}));
        RC_ASSERT(!mended.pieces.empty());
    }));
    CHECK(offers > 10);
}

TEST_CASE("Each stated bore is marked in the rounds that it is stated for, and only where it is") {
    Shell shell = test::plain_shell();
    shell.bores = {rod("A", 1500, 30), rod("A", 2600, 30), rod("A", 3400, 30), rod("C", 1500, 30)};
    shell.bores[0].drift = Length::mm(5);
    shell.bores[1].from_round = 2, shell.bores[1].to_round = 3;
    shell.bores[2].from_outside = Length::mm(70);
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(layout.pieces.empty());
    const std::vector<PlacedBore> placed = placed_bores(shell, layout);
    REQUIRE(placed.size() == 4);
    std::vector<std::vector<int>> rounds;
    for (const PlacedBore &bore : placed) {
        rounds.emplace_back();
        const StatedBore &stated = shell.bores[bore.stated];
        const WallPlace &wall = layout.walls[bore.wall];
        CHECK(wall.name == stated.wall);
        for (const BoredLog &log : bore.logs) {
            const int round = layout.pieces[log.piece].round;
            rounds.back().push_back(round);
            const Vec3 foot = wall.frame.to_local(log.foot);
            CHECK(foot.x == Approx(stated.from_left.mm() + (round - stated.from_round) * stated.drift.mm()));
            CHECK(foot.y == Approx(stated.from_outside.value_or(Length::mm(100)).mm()));
        }
    }
    CHECK(rounds == std::vector<std::vector<int>>{{1, 2, 3, 4}, {2, 3}, {1, 2, 3, 4}, {1, 2, 3, 4}});
}

TEST_CASE("A rod that grazes the cut of an opening from either side is refused") {
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 2000, 300, 800, 300)}; // starts in round 2, ends in round 3
    const auto refused = [&](double x) {
        shell.bores = {rod("A", x, 40)};
        shell.bores[0].from_round = 2, shell.bores[0].to_round = 2;
        return refusal(lay_out(shell).findings) != nullptr;
    };
    for (const double past : {-15.0, 15.0}) {
        CHECK(refused(2000 + past));
        CHECK(refused(2800 + past));
    }
    CHECK_FALSE(refused(2000 - 25));
    CHECK_FALSE(refused(2800 + 25));
}

TEST_CASE("Bedded are the logs on the foundation and on its steps, in each wall its own") {
    Shell shell = test::plain_shell(); // A and C start with a half log
    shell.steps = {step("A", 1500, 2000, 230)};
    const Layout layout = lay_out(shell);
    std::vector<std::string> bedded;
    for (const Piece &piece : layout.pieces)
        if (is_bedded(layout, piece)) bedded.push_back(piece.tag);
    // The step ends in the second round: it parts A-01 in two and carries A-02.
    CHECK(bedded == std::vector<std::string>{"A-01-1", "A-01-2", "A-02-1", "B-01-1", "C-01-1", "D-01-1"});
}

TEST_CASE("A rod stands on the foundation's step in its own wall, and on that of no other") {
    Shell shell = test::plain_shell();          // 5 m long, A and C opposite
    shell.steps = {step("A", 1500, 2000, 460)}; // two rounds
    shell.bores = {rod("A", 2500, 30), rod("C", 2500, 30), rod("A", 1000, 30)};
    for (StatedBore &bore : shell.bores)
        bore.from_round = 3;
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    std::vector<bool> bedded;
    for (const PlacedBore &bore : placed_bores(shell, layout))
        bedded.push_back(bore.logs.at(0).bedded);
    CHECK(bedded == std::vector<bool>{true, false, false});
}

TEST_CASE("Beside a corner at a slant a rod has whole wood from the crossing wall's furthest arris on") {
    Shell shell = test::plain_shell();
    shell.walls = test::octagon_plan(Length::mm(3000));
    shell.notch.kind = NotchKind::square_lap;
    // The crossing wall's inside face lies 200 square off its outside one, at 45 degrees to the log: it
    // leaves the log's outside face 200 * sqrt(2) = 282.8 from the corner. A bore of 30 and 0.5 beside it.
    const auto fits = [&](double x) {
        shell.bores = {rod("A", x, 30)};
        const Layout layout = lay_out(shell);
        REQUIRE(has_errors(layout.findings) == (refusal(layout.findings) != nullptr));
        return refusal(layout.findings) == nullptr;
    };
    CHECK(fits(282.8 + 15.5 + 1));
    CHECK_FALSE(fits(282.8 + 15.5 - 1));
    CHECK(fits(3000 - 282.8 - 15.5 - 1));
    CHECK_FALSE(fits(3000 - 282.8 - 15.5 + 1));
}

TEST_CASE("Where a rod finds no whole log it is told what is there instead, and which rounds are whole") {
    Shell shell = test::plain_shell(); // 5 m long, 4 rounds
    shell.steps = {step("B", 1000, 2000, 115)};
    shell.openings = {test::window("A", 1500, 220, 800, 250)};
    const auto told = [&](const StatedBore &bore) {
        shell.bores = {bore};
        return test::words(lay_out(shell).findings);
    };
    CHECK_THAT(
        told(rod("A", 6000, 20)),
        ContainsSubstring("6000 mm from the left lies past the ends of wall A, which is 5000 mm long"));
    CHECK_THAT(told(rod("A", 1900, 20)),
               ContainsSubstring("1900 mm from the left there is no whole log: window 1 is there"));
    CHECK_THAT(
        told(rod("A", 60, 20)),
        ContainsSubstring("60 mm from the left there is no whole log: the notches of corner DA are there"));
    const std::string on_step = told(rod("B", 2000, 20));
    CHECK_THAT(on_step,
               ContainsSubstring("2000 mm from the left there is no log, but step 1 of the foundation"));
    CHECK_THAT(on_step, ContainsSubstring("from round 2 to round 5 it would do there, or "));
    StatedBore higher = rod("B", 2000, 20);
    higher.from_round = 2;
    CHECK(told(higher).find("error") == std::string::npos);
    CHECK_FALSE(has_errors(lay_out(shell).findings));
}

TEST_CASE("A rod too near a face is told where it lies, and from where to where it leaves wood") {
    Shell shell = test::plain_shell(); // 200 mm thick
    shell.bores = {rod("A", 2500, 22)};
    shell.bores[0].from_outside = Length::mm(5);
    const std::string told = test::words(lay_out(shell).findings);
    CHECK_THAT(told,
               ContainsSubstring("a bore of 22 mm whose middle lies 5 mm from the outside leaves no wood"));
    CHECK_THAT(told, ContainsSubstring("from 21 mm to 179 mm from the outside it does"));
    for (const double y : {21.0, 179.0}) {
        shell.bores[0].from_outside = Length::mm(y);
        CHECK_FALSE(has_errors(lay_out(shell).findings));
    }
    for (const double y : {20.0, 180.0}) {
        shell.bores[0].from_outside = Length::mm(y);
        CHECK(has_errors(lay_out(shell).findings));
    }
}
