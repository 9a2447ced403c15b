#include "tests/bench/shells.h"

#include "kernel/shell/shapes.h"
#include "tests/support/parts.h"

namespace roundlay::bench {

namespace {

Length mm(double v) {
    return Length::mm(v);
}

void add(Shell &shell, const std::string &wall, double from, double sill, double width, double height) {
    shell.openings.push_back(test::window(wall, from, sill, width, height));
}

void add_pair(Shell &shell, const std::string &wall, double from, double sill) {
    add(shell, wall, from, sill, 820, 1250);
    add(shell, wall, from + 820 + 420, sill, 820, 1250);
}

Shell bare(const std::string &name, std::vector<Wall> walls, int rounds) {
    Shell shell = test::hewn_shell(name, std::move(walls), mm(200), rounds, mm(220), mm(25));
    shell.pegs.end_distance = mm(75);
    shell.pegs.between = mm(65);
    return shell;
}

} // namespace

Shell house() {
    Shell shell = bare("Bench house", l_plan(mm(11000), mm(9200), mm(5500), mm(4900)), 13);
    for (const char *wall : {"A", "A", "B", "E", "F"}) {
        const bool second = !shell.openings.empty() && shell.openings.back().wall == wall;
        add_pair(shell, wall, second ? 7300 : 1300, 760);
    }
    add(shell, "A", 5000, 0, 950, 2080);
    add(shell, "F", 6000, 760, 820, 1250);
    add(shell, "C", 1900, 0, 950, 2080);
    add(shell, "D", 1700, 760, 820, 1250);
    add(shell, "E", 4000, 1300, 500, 500);
    return shell;
}

Shell round_house() {
    Shell shell = bare("Bench round house", rectangle_plan(mm(6000), mm(5000)), 4);
    shell.thickness = mm(250);
    shell.rounds.gap = {};
    shell.notch.kind = NotchKind::saddle;
    shell.notch.overhang = mm(250);
    return shell;
}

Shell cabin() {
    Shell shell = round_house();
    shell.name = "Bench cabin";
    shell.rounds.count = 11;
    shell.rounds.pitch = mm(230);
    shell.thickness = mm(260);
    shell.notch.overhang = mm(300);
    shell.notch.scribe = mm(3);
    add(shell, "A", 1200, 0, 950, 2100);
    add(shell, "C", 3400, 930, 1100, 1000);
    return shell;
}

Shell hall() {
    Shell shell = bare("Bench hall", cross_plan(mm(9000), mm(8600), mm(5200)), 40);
    for (const Wall &wall : shell.walls)
        for (double sill = 760; sill < 7800; sill += 2400) {
            add_pair(shell, wall.name, 1000, sill);
            if (wall.length.mm() > 8000) add_pair(shell, wall.name, 4300, sill);
        }
    return shell;
}

} // namespace roundlay::bench
