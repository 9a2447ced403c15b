#include "kernel/shell/shapes.h"
#include "tests/support/any_parts.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace roundlay::test {

namespace {

Length mm(double v) {
    return Length::mm(v);
}

std::vector<Wall> any_plan() {
    const Length w = mm(between(6000, 14000)), d = mm(between(6000, 12000));
    const Length third = w / 3;
    switch (*rc::gen::inRange(0, 6)) {
    case 1:
        return l_plan(w, d, w * 0.45, d * 0.5);
    case 2:
        return inset_plan(w, d, third, third, mm(between(900, 2500)));
    case 3:
        return u_plan(w, d, third, third, d * 0.5);
    case 4:
        return t_plan(w, d, third, third, mm(between(1500, 4000)));
    case 5:
        return cross_plan(third, d / 3, mm(between(1500, 3000)));
    default:
        return rectangle_plan(w, d);
    }
}

/// A slope that leaves the least tail at both ends of the prism.
void choose_notch(Shell &shell) {
    const double thickest = shell.thickness.mm() + 60; // walls may be thicker than the shell's own figure
    const double steepest = (shell.rounds.pitch->mm() / 2 - shell.notch.least_tail.mm()) / (2 * thickest);
    const double s = steepest * between(0, 95) / 100;
    shell.notch.kind = any_tail(true);
    shell.notch.slope = Slope::rise_per_run(s);
    shell.notch.along = Slope::rise_per_run(s * between(-100, 100) / 100);
    shell.notch.across = Slope::rise_per_run(-s * between(-100, 100) / 100);
    if (between(0, 3) == 0) shell.notch.overhang = mm(between(1, 200));
}

} // namespace

Shell any_shell() {
    Shell shell;
    shell.name = "any";
    shell.walls = any_plan();
    shell.thickness = mm(between(120, 240));
    for (Wall &wall : shell.walls)
        if (between(0, 4) == 0) wall.thickness = shell.thickness + mm(between(-20, 60));
    shell.rounds.count = *rc::gen::inRange(1, 9);
    shell.rounds.pitch = mm(between(180, 330) + 0.25);
    shell.rounds.gap = mm(between(0, 45));
    shell.rounds.full_first = between(0, 1) == 0 ? "A" : "B";
    shell.rounds.top = between(0, 2) == 0 ? TopRule::staggered : TopRule::level;
    choose_notch(shell);
    add_any_openings(shell);
    shell.pegs.diameter = mm(between(25, 38));
    shell.pegs.end_distance = mm(between(45, 110));
    shell.pegs.between = mm(between(60, 90));
    return shell;
}

Shell any_tapered_shell() {
    Shell shell = any_shell();
    add_any_taper(shell);
    return shell;
}

Shell any_stepped_shell() {
    Shell shell = any_shell();
    const double w = between(6000, 10000), d = between(5000, 8000);
    shell.walls = rectangle_plan(mm(w), mm(d));
    shell.openings.clear();
    add_any_openings(shell);
    const double pitch = shell.rounds.pitch->mm(), gap = shell.rounds.gap.mm(),
                 top = *shell.rounds.count * pitch - gap - 60;
    const double seat = pitch / 2 * between(1, std::max(1, static_cast<int>(top / pitch * 2) - 1));
    const Length rise = mm(std::min(top, between(0, 1) == 0 ? seat : between(20, static_cast<int>(top))));
    if (between(0, 1) == 0) {
        const double from = between(1200, 2500);
        shell.steps = {{"A", mm(from), mm(between(300, static_cast<int>(w - from) - 1200)), rise}};
        return shell;
    }
    const double run = between(900, static_cast<int>(w) - 900);
    shell.steps = {{"A", mm(w - run), mm(run), rise},
                   {"B", {}, mm(between(900, static_cast<int>(d) - 900)), rise}};
    return shell;
}

Shell any_waned_shell() {
    Shell shell = between(0, 1) == 0 ? any_shell() : any_tapered_shell();
    const double log = shell.rounds.pitch->mm() - shell.rounds.gap.mm() + 24;
    shell.logs.diameter = mm(std::hypot(log, between(60, 260)));
    return shell;
}

namespace {

Shell with_saddles(Shell shell) {
    for (Wall &wall : shell.walls)
        wall.thickness = std::nullopt;
    shell.thickness = mm(between(200, 320));
    shell.rounds.gap = {};
    shell.rounds.pitch = shell.thickness * (between(78, 96) / 100.0);
    shell.notch = {};
    shell.notch.kind = NotchKind::saddle;
    shell.notch.overhang = mm(between(60, 350));
    shell.notch.scribe = mm(between(0, 1) == 0 ? 0 : between(1, 5));
    shell.openings.clear();
    add_any_openings(shell);
    if (between(0, 2) == 0) shell.logs.diameter = shell.thickness + mm(between(0, 20));
    for (int i = between(0, 3); i > 0;
         --i) { // logs as they come, none thinner than the pitch or thicker than some more
        OwnLog own;
        own.wall = (*rc::gen::elementOf(shell.walls)).name;
        own.round = between(1, *shell.rounds.count);
        const double least = shell.rounds.pitch->mm(), most = shell.thickness.mm() + 20;
        own.sizes.diameter = mm(least + (most - least) * between(0, 100) / 100);
        shell.own_logs.push_back(own);
    }
    return shell;
}

} // namespace

Shell any_saddle_shell() {
    return with_saddles(any_shell());
}

/// The step is drawn for the shell's own pitch: it may lie anywhere on the logs that the saddles come with.
Shell any_stepped_saddle_shell() {
    return with_saddles(any_stepped_shell());
}

} // namespace roundlay::test
