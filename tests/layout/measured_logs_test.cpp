// Logs that slope, are packed up, or have tails of their own, as an old house has them.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/stages.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

using namespace roundlay;
using Catch::Matchers::WithinAbs;

namespace {

/// Of the plain shell: rounds of 230 mm with a gap of 20 mm, walls 200 mm thick; wall A starts with a full
/// log.
Shell with_log(const OwnLog &log) {
    Shell shell = test::plain_shell();
    shell.own_logs.push_back(log);
    return shell;
}

OwnLog log_of_a(int round) {
    OwnLog log;
    log.wall = "A", log.round = round;
    return log;
}

const Course &course(const Stages &stages, const char *wall, int round) {
    return in_round(stages.courses.logs[*wall_named(stages.plan, wall)], round);
}

} // namespace

TEST_CASE("A log with two gaps slopes, and so do those over it") {
    OwnLog log = log_of_a(2);
    log.gap_left = Length::mm(5), log.gap_right = Length::mm(25);
    const Shell shell = with_log(log);
    const Stages stages = work_out(shell);
    const Course &under = course(stages, "A", 1), &own = course(stages, "A", 2),
                 &over = course(stages, "A", 3);
    CHECK_THAT(own.datum.low - under.datum.high, WithinAbs(5, 1e-9));
    CHECK_THAT(own.far.low - under.far.high, WithinAbs(25, 1e-9));
    CHECK_THAT(over.far.low - over.datum.low, WithinAbs(20, 1e-9));
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(overlaps(layout, bodies_of(layout)).empty());
}

TEST_CASE("A first log is packed up from the lowest foundation") {
    OwnLog log = log_of_a(1);
    log.gap_right = Length::mm(30);
    const Stages stages = work_out(with_log(log));
    CHECK(course(stages, "A", 1).datum.low == 0);
    CHECK_THAT(course(stages, "A", 1).far.low, WithinAbs(30, 1e-9));
}

TEST_CASE("A tail has the height and the slopes that are stated of it, at that end alone") {
    OwnLog log = log_of_a(1);
    log.tails.push_back(
        {LogEnd::right, Slope::rise_per_run(0.05), Slope::rise_per_run(-0.1), Length::mm(101)});
    const Shell shell = with_log(log);
    const Stages stages = work_out(shell);
    const WallPlace &a = stages.plan.walls[*wall_named(stages.plan, "A")];
    const auto top = [&](std::size_t meeting, double along) {
        const EndNotch &notch = stages.corners.notches[*wall_named(stages.plan, "A")][meeting].front();
        const Vec3 at = a.frame.to_world({a.meetings[meeting].x + along, a.thickness / 2, 0});
        return notch.top->height_at(at.x, at.y);
    };
    CHECK_THAT(top(1, 0), WithinAbs(101, 1e-9)); // on the foundation, in the middle of the corner
    CHECK_THAT(top(1, 100), WithinAbs(101 + 5, 1e-9));
    const Stages plain = work_out(test::plain_shell());
    const EndNotch &left = stages.corners.notches[*wall_named(stages.plan, "A")][0].front();
    CHECK(left.top->height_at(0, 0) ==
          plain.corners.notches[*wall_named(plain.plan, "A")][0].front().top->height_at(0, 0));
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(overlaps(layout, bodies_of(layout)).empty());
}

TEST_CASE("Round logs lie on one another: neither gaps nor tails are stated of them") {
    Shell shell = test::round_shell();
    OwnLog log = log_of_a(2);
    log.gap_left = Length::mm(5);
    shell.own_logs.push_back(log);
    const Layout layout = lay_out(shell);
    REQUIRE(has_errors(layout.findings));
    CHECK(test::has(layout.findings, "round-logs-uneven"));
}
