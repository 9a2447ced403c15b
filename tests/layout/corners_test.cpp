// Corners: which logs lie on which, and where none does.
#include "kernel/layout/corners/corners.h"
#include "kernel/layout/plan/plan.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

using namespace roundlay;

TEST_CASE("A notch names the crossing log over or under it where there is a seam to it, and else none") {
    // Half logs of 95 keep 47.5 under their seam, less 25 over the notch's slopes of 1 in 8: under the least
    // tail of 38, so that they end between the walls and the logs over them lie on nothing there.
    const Shell shell = test::plain_shell();
    Layout layout;
    lay_out_plan(shell, layout);
    const auto courses = lay_out_courses(shell, layout);
    int butts = 0, seams = 0;
    for (const WallNotches &wall : lay_out_corners(shell, layout, courses))
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
