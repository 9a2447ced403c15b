// An L-shaped house with doors and windows, for looking at.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/shapes.h"

#include <string>
#include <vector>

namespace roundlay::test {

inline Opening opening(OpeningKind kind, const std::string &wall, double from_left, double sill, double width,
                       double height) {
    Opening made;
    made.kind = kind;
    made.wall = wall;
    made.from_left = Length::mm(from_left);
    made.sill = Length::mm(sill);
    made.width = Length::mm(width);
    made.height = Length::mm(height);
    made.name = wall + " " + std::to_string(static_cast<int>(from_left));
    return made;
}

/// 9.6 m x 8 m with a re-entrant corner, 200 mm logs at 230 mm with a 20 mm gap. Under 10 rounds it is too
/// low for doors and windows and has none.
inline Shell house(int rounds = 13) {
    Shell shell;
    shell.name = "House at the bend";
    shell.thickness = Length::mm(200);
    shell.walls = l_plan(Length::mm(9600), Length::mm(8000), Length::mm(5200), Length::mm(4600));
    shell.rounds.count = rounds;
    shell.rounds.pitch = Length::mm(230);
    shell.rounds.gap = Length::mm(20);
    if (rounds < 10) return shell;
    shell.openings = {opening(OpeningKind::door, "A", 5600, 115, 1000, 2100),
                      opening(OpeningKind::window, "A", 1800, 900, 1400, 1100),
                      opening(OpeningKind::window, "B", 1500, 900, 1500, 1100),
                      opening(OpeningKind::window, "C", 1400, 900, 1100, 1100),
                      opening(OpeningKind::door, "D", 1100, 115, 900, 2100),
                      opening(OpeningKind::window, "E", 1900, 900, 1400, 1100),
                      opening(OpeningKind::window, "F", 1400, 900, 1000, 1100),
                      opening(OpeningKind::window, "F", 4800, 900, 1600, 1100)};
    return shell;
}

} // namespace roundlay::test
