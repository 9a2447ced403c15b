#include "tests/support/shells.h"

#include "kernel/shell/notch_kinds.h"
#include "kernel/shell/shapes.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numbers>

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

/// A kind of the tail family.
NotchKind any_tail(bool stated_too) {
    std::vector<NotchKind> kinds;
    for (const KindOfNotch &each : all_kinds_of_notch)
        if (each.slopes != NotchSlopes::none && (stated_too || each.slopes != NotchSlopes::stated))
            kinds.push_back(each.kind);
    return *rc::gen::elementOf(kinds);
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

/// Logs with a butt and a tip: thinner, and higher or lower, toward the tip; some with sizes of their own.
void add_any_taper(Shell &shell) {
    const double log = shell.rounds.pitch->mm() - shell.rounds.gap.mm(), d = between(0, 12);
    shell.logs.butt_height = mm(log + d);
    shell.logs.tip_height = mm(log - d);
    shell.logs.tip_width =
        shell.thickness - mm(between(20, 50)); // a wall may be 20 mm under the shell's figure
    for (int i = between(0, 3); i > 0; --i) {
        OwnLog own;
        own.wall = (*rc::gen::elementOf(shell.walls)).name;
        own.round = between(1, *shell.rounds.count);
        // a sill of half logs as high as whole ones has its logs beside those that it crosses: no wall to be
        // built
        if (own.round > 1) own.sizes.butt_height = mm(log + between(-5, 8));
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

namespace {

constexpr double radians = std::numbers::pi / 180;

Wall wall(std::size_t index, double heading, double length) {
    Wall w;
    w.name = std::string(1, static_cast<char>('A' + index));
    w.heading = heading;
    w.length = mm(length);
    return w;
}

struct Line {
    double x = 0, y = 0, dx = 0, dy = 0, length = 0;
};

std::vector<Line> lines_of(const std::vector<Wall> &walls) {
    std::vector<Line> lines;
    double x = 0, y = 0;
    for (const Wall &w : walls) {
        const double c = std::cos(w.heading * radians), s = std::sin(w.heading * radians);
        lines.push_back({x, y, c, s, w.length.mm()});
        x += w.length.mm() * c;
        y += w.length.mm() * s;
    }
    return lines;
}

/// The first wall that a line from wall `from`, at `at` along it, runs into. The wall itself where there is
/// none.
std::size_t wall_ahead(const std::vector<Wall> &walls, std::size_t from, double at, double heading) {
    const std::vector<Line> lines = lines_of(walls);
    const double x = lines[from].x + at * lines[from].dx, y = lines[from].y + at * lines[from].dy;
    const double dx = std::cos(heading * radians), dy = std::sin(heading * radians);
    std::size_t found = from;
    double nearest = HUGE_VAL;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Line &l = lines[i];
        const double turn = dx * l.dy - dy * l.dx;
        if (i == from || std::abs(turn) < 0.1) continue;
        const double along = ((l.x - x) * l.dy - (l.y - y) * l.dx) / turn;
        const double there = ((l.x - x) * dy - (l.y - y) * dx) / turn;
        if (along <= 0 || there < 0 || there > l.length || along >= nearest) continue;
        nearest = along;
        found = i;
    }
    return found;
}

void add_any_partitions(Shell &shell) {
    for (int count = between(0, 3); count > 0; --count) {
        const std::size_t from =
            static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(shell.walls.size())));
        const Wall &start = shell.walls[from];
        Partition p;
        p.name = std::string(1, static_cast<char>('P' + shell.partitions.size()));
        p.from = start.name;
        p.from_left = start.length * (between(15, 85) / 100.0);
        double heading = start.heading + 90;
        if (between(0, 3) == 0) {
            heading += between(-25, 25);
            p.heading = heading;
        }
        const std::size_t to = wall_ahead(shell.walls, from, p.from_left.mm(), heading);
        if (to == from) continue;
        p.to = shell.walls[to].name;
        if (between(0, 2) == 0) p.thickness = shell.thickness + mm(between(0, 40));
        shell.partitions.push_back(p);
    }
}

void add_any_own_notches(Shell &shell) {
    const double s = shell.notch.slope.ratio();
    const auto kind = [] { return any_tail(false); };
    for (int i = between(0, 2); i > 0; --i) {
        const std::size_t at =
            static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(shell.walls.size())));
        CornerNotch own{shell.walls[at].name, shell.walls[(at + 1) % shell.walls.size()].name, shell.notch};
        own.notch.kind = kind();
        own.notch.overhang = mm(between(0, 150));
        shell.corners.push_back(own);
    }
    for (int i = between(0, 4); i > 0; --i) {
        OwnLog own;
        own.wall = (*rc::gen::elementOf(shell.walls)).name;
        own.round = between(1, *shell.rounds.count);
        if (between(0, 1) == 0) own.notch.kind = kind();
        if (between(0, 1) == 0) own.notch.slope = Slope::rise_per_run(s * between(0, 100) / 100);
        if (between(0, 1) == 0) own.notch.overhang_left = mm(between(0, 200));
        if (between(0, 1) == 0) own.notch.overhang_right = mm(between(0, 200));
        shell.own_logs.push_back(own);
    }
}

/// A window as near to a wall's left corner as the rules let it.
void add_opening_near_corner(Shell &shell) {
    Opening o;
    o.wall = shell.walls[0].name;
    o.from_left = shell.thickness * 2 + mm(between(0, 100));
    o.width = mm(between(300, 700));
    o.sill = mm(between(0, 300));
    o.height = mm(between(100, 500));
    shell.openings = {o};
}

} // namespace

std::vector<Wall> bay_plan(Length width, Length depth, Length from_left, Length side, Length front,
                           double turn) {
    const double c = std::cos(turn * radians), b = side.mm();
    const double rest = width.mm() - from_left.mm() - 2 * b * c - front.mm();
    return {wall(0, 0, from_left.mm()), wall(1, 360 - turn, b),  wall(2, 0, front.mm()),
            wall(3, turn, b),           wall(4, 0, rest),        wall(5, 90, depth.mm()),
            wall(6, 180, width.mm()),   wall(7, 270, depth.mm())};
}

std::vector<Wall> octagon_plan(Length side) {
    std::vector<Wall> walls;
    for (std::size_t i = 0; i < 8; ++i)
        walls.push_back(wall(i, 45.0 * static_cast<double>(i), side.mm()));
    return walls;
}

Shell any_family_shell() {
    Shell shell = any_shell();
    const int plan = between(0, 5);
    if (plan == 0)
        shell.walls = bay_plan(mm(9000), mm(6000), mm(between(1500, 2500)), mm(between(1400, 2000)),
                               mm(between(1200, 1800)), *rc::gen::element(45, 45, 40, 60, 90));
    if (plan == 1) shell.walls = octagon_plan(mm(between(1800, 3500)));
    if (plan < 2) {
        shell.openings.clear();
        shell.notch.slope = Slope::rise_per_run(shell.notch.slope.ratio() / 2);
        shell.notch.along = Slope::rise_per_run(shell.notch.along.ratio() / 2);
        shell.notch.across = Slope::rise_per_run(shell.notch.across.ratio() / 2);
    }
    add_any_partitions(shell);
    add_any_own_notches(shell);
    if (between(0, 3) == 0) shell.notch.shoulder = mm(between(-4, 6));
    if (between(0, 4) == 0) add_opening_near_corner(shell);
    if (between(0, 3) == 0) add_any_taper(shell);
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

Shell round_shell() {
    Shell shell = plain_shell();
    shell.thickness = mm(240);
    shell.rounds.count = 5;
    shell.rounds.pitch = mm(210);
    shell.rounds.gap = {};
    shell.notch.kind = NotchKind::saddle;
    shell.notch.overhang = mm(240);
    return shell;
}

Opening window(const std::string &wall, double from_left, double sill, double width, double height) {
    Opening o;
    o.wall = wall;
    o.from_left = mm(from_left);
    o.sill = mm(sill);
    o.width = mm(width);
    o.height = mm(height);
    return o;
}

Shell plain_shell() {
    Shell shell;
    shell.name = "plain";
    shell.walls = rectangle_plan(mm(5000), mm(4000));
    shell.thickness = mm(200);
    shell.rounds.count = 4;
    shell.rounds.pitch = mm(230);
    shell.rounds.gap = mm(20);
    shell.wood.species = "eastern hemlock";
    return shell;
}

} // namespace roundlay::test
