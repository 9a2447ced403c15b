#include "tests/support/shells.h"

#include "kernel/shell/shapes.h"

#include <cmath>
#include <numbers>

namespace roundlay::test {

namespace {

Length mm(double v) {
    return Length::mm(v);
}

constexpr double radians = std::numbers::pi / 180;

Wall wall(std::size_t index, double heading, double length) {
    Wall w;
    w.name = std::string(1, static_cast<char>('A' + index));
    w.heading = heading;
    w.length = mm(length);
    return w;
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

Shell plain_shell() {
    Shell shell = hewn_shell("plain", rectangle_plan(mm(5000), mm(4000)), mm(200), 4, mm(230), mm(20));
    shell.wood.species = "eastern hemlock";
    return shell;
}

Shell floored() {
    Shell shell = plain_shell();
    shell.floors = {joists("G", "A", "C", 560, {Length::mm(100), Length::mm(180)}, 80)};
    shell.floors[0].spacing = Length::mm(600);
    return shell;
}

} // namespace roundlay::test
