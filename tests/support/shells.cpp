#include "tests/support/shells.h"

#include "kernel/shell/shapes.h"

#include <rapidcheck.h>

#include <algorithm>

namespace roundlay::test {

namespace {

double between(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}
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

void add_any_openings(Shell &shell) {
    for (const Wall &wall : shell.walls) {
        const int count = *rc::gen::inRange(0, 4);
        // A wall loses its two corners and a little more at each end; openings stand in equal bays.
        const double margin = 2 * shell.thickness.mm() + 150, room = wall.length.mm() - 2 * margin;
        const double bay = room / std::max(count, 1), island = 500;
        if (bay < island + 400) continue;
        for (int i = 0; i < count; ++i) {
            Opening o;
            o.kind = between(0, 3) == 0 ? OpeningKind::door : OpeningKind::window;
            o.wall = wall.name;
            o.width = mm(between(300, static_cast<int>(std::min(bay - island, 2400.0))));
            o.from_left = mm(margin + i * bay + between(0, static_cast<int>(bay - island - o.width.mm())));
            const double top = *shell.rounds.count * shell.rounds.pitch->mm() - shell.rounds.gap.mm() - 60;
            o.sill = mm(o.kind == OpeningKind::door ? 0 : between(0, static_cast<int>(top * 0.5)));
            o.height = mm(between(100, static_cast<int>(std::max(110.0, top - o.sill.mm() - 1))));
            shell.openings.push_back(o);
        }
    }
}

/// A slope that leaves the least tail at both ends of the prism.
void choose_notch(Shell &shell) {
    const double thickest = shell.thickness.mm() + 60; // walls may be thicker than the shell's own figure
    const double steepest = (shell.rounds.pitch->mm() / 2 - shell.notch.least_tail.mm()) / (2 * thickest);
    const double s = steepest * between(0, 95) / 100;
    shell.notch.kind = *rc::gen::element(NotchKind::full_dovetail, NotchKind::half_dovetail,
                                         NotchKind::square_lap, NotchKind::stated);
    shell.notch.slope = Slope::rise_per_run(s);
    shell.notch.along = Slope::rise_per_run(s * between(-100, 100) / 100);
    shell.notch.across = Slope::rise_per_run(-s * between(-100, 100) / 100);
    if (between(0, 3) == 0) shell.notch.overhang = mm(between(1, 200));
}

/// Logs with a butt and a tip: thinner, and higher or lower, toward the tip; some with sizes of their own.
void add_any_taper(Shell &shell) {
    const double log = shell.rounds.pitch->mm() - shell.rounds.gap.mm(), d = between(0, 12);
    shell.logs.butt_height = mm(log + d);
    shell.logs.tip_height = mm(log - d);
    shell.logs.tip_width = shell.thickness - mm(between(20, 50)); // a wall may be 20 mm under the shell's figure
    for (int i = between(0, 3); i > 0; --i) {
        OwnLog own;
        own.wall = (*rc::gen::elementOf(shell.walls)).name;
        own.round = between(1, *shell.rounds.count);
        own.sizes.butt_height = mm(log + between(-5, 8));
        if (between(0, 1) == 0) own.sizes.butt = between(0, 1) == 0 ? LogEnd::left : LogEnd::right;
        shell.own_logs.push_back(own);
    }
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

Shell plain_shell() {
    Shell shell;
    shell.name = "plain";
    shell.walls = rectangle_plan(mm(5000), mm(4000));
    shell.thickness = mm(200);
    shell.rounds.count = 4;
    shell.rounds.pitch = mm(230);
    shell.rounds.gap = mm(20);
    return shell;
}

} // namespace roundlay::test
