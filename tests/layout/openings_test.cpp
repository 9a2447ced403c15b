// What openings in walls take of single logs, in figures worked out by hand.

#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

using namespace roundlay;
using test::has;

TEST_CASE("An opening takes what dips into it of a log whose underside falls along the wall") {
    // Underside from 230 at the left end to 220, top from 440 to 430; from 1000 to 3000 mm of 5000 that is
    // 228 to 224 and 438 to 434.
    Course course;
    course.x_far = 5000;
    course.datum = {230, 440, 335, 200};
    course.far = {220, 430, 325, 200};
    Shell shell = test::plain_shell();
    const Layout layout = lay_out(shell);
    const auto cuts = [&](double sill, double top) {
        shell.openings = {test::window("A", 1000, sill, 2000, top - sill)};
        return cuts_of(shell, layout, layout, Index<WallPlace>(0), course);
    };
    CHECK(cuts(100, 223).empty());
    const std::vector<OpeningCut> dips = cuts(100, 226);
    REQUIRE(dips.size() == 1);
    CHECK(dips[0].use == BoxUse::header);
    CHECK_FALSE(dips[0].severs);
    CHECK(dips[0].low == Approx(224));
    CHECK(dips[0].high == Approx(226));
    const std::vector<OpeningCut> stands = cuts(436, 600);
    REQUIRE(stands.size() == 1);
    CHECK(stands[0].use == BoxUse::sill);
    CHECK(stands[0].low == Approx(436));
    CHECK(stands[0].high == Approx(438));
    CHECK(cuts(439, 600).empty());
}

TEST_CASE("A sloping sill that stands just on a log's top takes its whole wedge from that log") {
    Shell shell = test::plain_shell();
    shell.pegs.wanted = false;
    shell.openings = {test::window("A", 2000, 210, 800, 500)}; // the first log is 210 mm high
    const auto wood = [&] {
        const Layout layout = lay_out(shell);
        REQUIRE_FALSE(has_errors(layout.findings));
        double sum = 0;
        for (const Piece &p : layout.pieces)
            sum += body_of(p).volume;
        return sum;
    };
    const double level = wood();
    shell.trim.sill_slope = Slope::rise_per_run(0.1);
    // it falls 20 mm through a wall 200 thick, over 800 mm
    CHECK(level - wood() == Approx(800 * 200.0 * 20 / 2).epsilon(1e-12));
}

TEST_CASE("A window that stands on the height of a step meets it only where it reaches over its edge") {
    // Step from 2000 to 3000 mm, 230 high.
    const auto meets = [](double from, double to) {
        Shell shell = test::plain_shell();
        shell.steps = {{"A", Length::mm(2000), Length::mm(1000), Length::mm(230)}};
        shell.openings = {test::window("A", from, 230, to - from, 400)};
        return has(lay_out(shell).findings, "opening-meets-step");
    };
    CHECK_FALSE(meets(1400, 2000));
    CHECK_FALSE(meets(1400, 1950));
    CHECK(meets(1400, 2001));
    CHECK(meets(1400, 2300));
    CHECK(meets(2700, 3300));
    CHECK(meets(2999, 3500));
    CHECK_FALSE(meets(3000, 3500));
    CHECK_FALSE(meets(3050, 3500));
    CHECK_FALSE(meets(2000, 3000)); // wholly over it
}

TEST_CASE("A window whose sill lies in the gap over a log says that the slope stated for sills is not cut") {
    Shell shell = test::plain_shell(); // logs of 210 with gaps of 20: wall A's third starts at 460
    shell.trim.sill_slope = Slope::rise_per_run(1.0 / 20); // 10 over 200
    shell.openings = {test::window("A", 1500, 460, 900, 210)};
    const auto told =
        ContainsSubstring("window 1: its sill is not cut to the slope stated for sills, which falls "
                          "10 mm through the wall: the log under it ends 20 mm lower");
    CHECK_THAT(test::words(lay_out(shell).findings), told);
    shell.openings[0].sill = Length::mm(445); // falls to 435, and the log ends at 440: a wedge is cut
    shell.openings[0].height = Length::mm(225);
    CHECK_THAT(test::words(lay_out(shell).findings), !told);
    shell.openings[0] = test::window("A", 1500, 460, 900, 210);
    shell.trim.sill_slope = Slope();
    CHECK_THAT(test::words(lay_out(shell).findings), !told);
    shell.trim.sill_slope = Slope::rise_per_run(1.0 / 20);
    shell.openings[0].kind = OpeningKind::door; // no sill is cut for a door
    CHECK_THAT(test::words(lay_out(shell).findings), !told);
}

TEST_CASE("The wood under a sloping sill is what its outer edge leaves, and advice reckons with that") {
    Shell shell = test::plain_shell();                         // wall A's second log from 230 to 440
    shell.trim.sill_slope = Slope::rise_per_run(1.0 / 4);      // 50 over 200
    shell.openings = {test::window("A", 1500, 320, 900, 350)}; // 90 inside, 40 outside
    const std::string told = test::words(lay_out(shell).findings);
    CHECK_THAT(told,
               ContainsSubstring("window 1 leaves only 40 mm of the log under its sloping sill outside, "
                                 "where at least 50 mm should stay; raise its sill by 10 mm"));
    shell.openings[0].sill = Length::mm(330); // followed
    shell.openings[0].height = Length::mm(340);
    CHECK_THAT(test::words(lay_out(shell).findings), !ContainsSubstring("sloping sill outside"));
    shell.openings[0].sill = Length::mm(260); // 30 inside: it runs out of the log's underside
    shell.openings[0].height = Length::mm(410);
    CHECK_THAT(test::words(lay_out(shell).findings),
               ContainsSubstring("window 1 leaves only 0 mm of the log"));
}
