// What openings get besides their hole: grooves for splines, sills that fall outward.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/layout/floored_bodies.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/pieces.h"
#include "tests/support/shells.h"

using namespace roundlay;
using test::clean;
using test::has;
using test::laid;
using test::volume_of;

namespace {

/// Without pegs, so that volumes are those of the trim alone.
Shell with_window() {
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 2000, 100, 800, 500)};
    shell.pegs.wanted = false;
    return shell;
}

} // namespace

TEST_CASE("Grooves for splines are cut into every jamb") {
    Shell shell = with_window();
    const double before = volume_of(laid(shell));
    shell.trim.spline_width = Length::mm(40);
    shell.trim.spline_depth = Length::mm(30);
    const Layout layout = laid(shell);
    // of the opening's 500 mm, two gaps of 20 mm are no wood: 100 to 210, 230 to 440, 460 to 600
    CHECK(before - volume_of(layout) == Approx(2 * 40.0 * 30 * (110 + 210 + 140)).epsilon(1e-12));
    CHECK(clean(layout));
    shell.trim.spline_width = Length::mm(120);
    CHECK(has(lay_out(shell).findings, "trim-does-not-fit"));
}

TEST_CASE("An opening has its own trim where it states one") {
    Shell shell = test::plain_shell();
    const Opening o = test::window("A", 1200, 100, 800, 500);
    shell.openings = {o, o};
    shell.openings[1].from_left = Length::mm(3000);
    shell.pegs.wanted = false;
    const double bare = volume_of(laid(shell));
    shell.trim.spline_width = Length::mm(40);
    shell.trim.spline_depth = Length::mm(30);
    shell.openings[0].trim.spline_depth = Length::mm(50);
    shell.openings[1].trim.spline_depth = Length();
    // as above: 460 mm of each jamb are wood; the second opening has no groove
    CHECK(bare - volume_of(laid(shell)) == Approx(2 * 40.0 * 50 * 460).epsilon(1e-12));
    const double grooved = volume_of(laid(shell));
    shell.openings[1].trim.sill_slope = Slope::rise_per_run(0.1);
    CHECK(grooved - volume_of(laid(shell)) == Approx(800 * 200.0 * 20 / 2).epsilon(1e-12));
    shell.openings[0].trim.spline_width = Length::mm(120);
    const Layout refused = lay_out(shell);
    REQUIRE(has(refused.findings, "trim-does-not-fit"));
    CHECK(refused.findings.front().subject == "opening[0].spline_width");
}

TEST_CASE("A window's sill falls outward, in the log that it is cut into or the one below") {
    Shell shell = with_window();
    const double level = volume_of(laid(shell));
    shell.trim.sill_slope = Slope::rise_per_run(0.1);
    CHECK(level - volume_of(laid(shell)) == Approx(800 * 200.0 * 20 / 2).epsilon(1e-12));
    shell.openings[0].sill =
        Length::mm(220); // 10 mm over the top of the log: half of the wedge is in the gap
    shell.trim.sill_slope = Slope();
    const double over = volume_of(laid(shell));
    shell.trim.sill_slope = Slope::rise_per_run(0.1);
    CHECK(over - volume_of(laid(shell)) == Approx(800 * 100.0 * 10 / 2).epsilon(1e-12));
    CHECK(clean(laid(shell)));
}
