// Corners: which logs lie on which, and where none does.
#include "kernel/layout/corners/corners.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/plan/plan.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

using namespace roundlay;

TEST_CASE("A notch names the crossing log over or under it where there is a seam to it, and else none") {
    // Half logs of 95 keep 47.5 under their seam, less 25 over the notch's slopes of 1 in 8: under the least
    // tail of 38, so that they end between the walls and the logs over them lie on nothing there.
    const Shell shell = test::plain_shell();
    const auto plan = lay_out_plan(shell);
    const auto courses = lay_out_courses(shell, plan);
    int butts = 0, seams = 0;
    const auto corners = lay_out_corners(shell, plan, {}, courses);
    for (const WallNotches &wall : corners.notches)
        for (const std::vector<EndNotch> &meeting : wall)
            for (const EndNotch &n : meeting) {
                butts += n.butts;
                seams += n.under.has_value();
                CHECK((n.below >= 1) == n.under.has_value());
                CHECK((n.above >= 1) == n.top.has_value());
            }
    CHECK(butts > 0);
    CHECK(seams > 0);
}

TEST_CASE("A half log that is too thin to run on past a partition says that it stands in two pieces") {
    Shell shell = test::plain_shell(); // half logs of 95 lie in walls B and D
    shell.partitions = {test::partition("P", "D", Length::mm(2000), "B")};
    shell.notch.least_tail = Length::mm(90);
    shell.pegs.wanted = false;
    const Layout layout = lay_out(shell);
    const std::string told = test::words(layout.findings);
    CAPTURE(told);
    CHECK_THAT(told, ContainsSubstring("it stands in two pieces, one to either side of wall P"));
    const auto parted = std::ranges::count_if(
        layout.pieces, [](const Piece &piece) { return piece.tag == "B-01-2" || piece.tag == "D-01-2"; });
    CHECK(parted == 2);
    shell.notch.kind = NotchKind::square_lap;
    shell.notch.least_tail = Length::mm(20);
    CHECK(test::words(lay_out(shell).findings).find("in two pieces") == std::string::npos);
}
