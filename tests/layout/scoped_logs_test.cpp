// Round logs scoped over one another: what is bored and grooved in them, by hand.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/pieces.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using test::step;
using test::words;

namespace {

/// 240 mm in diameter, 210 mm from log to log: each reaches 15 mm over and under its own 210.
Shell bored_shell() {
    Shell shell = test::round_shell();
    StatedBore rod;
    rod.use = BoreUse::rod;
    rod.wall = "A";
    rod.from_left = Length::mm(2600);
    shell.bores = {rod};
    return shell;
}

OwnLog of_diameter(int round, double diameter) {
    OwnLog own;
    own.wall = "A";
    own.round = round;
    own.sizes.diameter = Length::mm(diameter);
    return own;
}

/// How much wood of that log the rod goes through.
double bored_in(const Layout &layout, const std::string &tag) {
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    for (const Cut &cut : test::piece(layout, tag).cuts)
        if (const Bore *bore = std::get_if<Bore>(&cut); bore && bore->use) return bore->z_to - bore->z_from;
    return 0;
}

} // namespace

TEST_CASE("A rod runs down the middle of a wall of round logs, from crown to groove") {
    const Layout layout = lay_out(bored_shell());
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    int logs = 0;
    for (const Piece &p : layout.pieces)
        for (const Cut &c : p.cuts) {
            const Bore *bore = std::get_if<Bore>(&c);
            if (!bore || !bore->use) continue;
            ++logs;
            CHECK(bore->y == Approx(p.blank.width / 2));
            // the groove over the log below, 210 mm lower and 120 mm in radius, reaches 30 mm over this one's
            // underside
            CHECK(bore->z_from == Approx(p.round == 1 ? 0 : 30));
            if (p.round > 1 && p.round < 5) CHECK(bore->z_to == Approx(240));
        }
    CHECK(logs == 5);
}

TEST_CASE("From crown to crown a rod goes through the pitch less what the groove clears") {
    Shell shell = bored_shell();
    shell.notch.scribe = Length::mm(4);
    for (const char *tag : {"A-02-1", "A-03-1", "A-04-1"})
        CHECK(bored_in(lay_out(shell), tag) == Approx(210 - 4));
}

TEST_CASE("A rod goes through a log from the top of the one that it lies on, however thin that is") {
    Shell shell = bored_shell();
    shell.own_logs = {of_diameter(2, 210)}; // as thick as the pitch: no crown over its 210
    const Layout layout = lay_out(shell);
    CHECK(bored_in(layout, "A-02-1") == Approx(210 + 105 - 120));
    CHECK(bored_in(layout, "A-03-1") == Approx(210 + 120 - 105));
    CHECK(bored_in(layout, "A-04-1") == Approx(210));
}

TEST_CASE("In a wall that stands wholly on a step a rod goes through its lowest log from the step on") {
    const auto on_step = [](Shell shell, double rise) {
        StatedBore rod;
        rod.wall = "A";
        rod.from_left = Length::mm(2600);
        rod.from_round = 3;
        shell.bores = {rod};
        shell.steps = {step("A", 0, 5000, rise), step("B", 0, 1500, rise), step("D", 2500, 1500, rise)};
        return lay_out(shell);
    };
    // Two rounds of 210: the third log has no other under it to be grooved over.
    CHECK(bored_in(on_step(test::round_shell(), 420), "A-03-1") == Approx(210 + 15));
    CHECK(bored_in(on_step(test::round_shell(), 420), "A-04-1") == Approx(210));
    // Hewn: two rounds of 230, and 100 of the third log's 210.
    CHECK(bored_in(on_step(test::plain_shell(), 560), "A-03-1") == Approx(110));
}

TEST_CASE("A round log as thick as the pitch reaches the one below it, a thinner one does not") {
    Shell shell = test::round_shell();
    const auto refused = [&](double diameter) {
        shell.own_logs = {of_diameter(3, diameter)};
        return test::has(lay_out(shell).findings, "stick-too-thin");
    };
    CHECK_FALSE(refused(210));
    CHECK(refused(209.9));
}

TEST_CASE("A peg of round logs is as long as from top to top and half of the lower log") {
    const Layout layout = lay_out(test::round_shell());
    int pegs = 0;
    for (const Peg &peg : layout.pegs) {
        const int round = layout.pieces[peg.upper].round;
        if (round < 3 || round > 4) continue; // half logs at the bottom and level tops
        CHECK(peg.length == Approx(210 + 210 / 2.0));
        ++pegs;
    }
    CHECK(pegs > 10);
}

TEST_CASE("Over a step at the wall's end a round log is grooved from where the log below it starts") {
    Shell shell = test::round_shell(); // ends 240 mm past the corners
    shell.steps = {step("A", 0, 2000, 210), step("D", 2500, 1500, 210)};
    const Layout layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    int grooves = 0;
    for (const Cut &cut : test::piece(layout, "A-02-1").cuts)
        if (const ScopeCut *scope = std::get_if<ScopeCut>(&cut); scope && scope->use == ScopeUse::groove) {
            CHECK(scope->x_from == Approx(2000 + 240));
            ++grooves;
        }
    CHECK(grooves == 1);
}
