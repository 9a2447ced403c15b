#include "tests/support/any_parts.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cmath>
#include <numbers>

namespace roundlay::test {

namespace {

Length mm(double v) {
    return Length::mm(v);
}

constexpr double radians = std::numbers::pi / 180;

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

} // namespace roundlay::test
