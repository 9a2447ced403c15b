// A room with joists in it, as tests of floors start from.
#pragma once

#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <vector>

namespace roundlay::test {

/// 5 m x 4 m, 200 mm thick: the room is 4600 by 3600. Joists 100 x 180 with their tops at 560: their beds at
/// 380 lie in the second log of wall A (230 to 440) and the tops in the third (460 to 670).
inline Shell floored() {
    Shell shell = plain_shell();
    Floor floor;
    floor.name = "G";
    floor.from = "A";
    floor.to = "C";
    floor.level = Length::mm(560);
    floor.joist = {Length::mm(100), Length::mm(180)};
    floor.spacing = Length::mm(600);
    floor.bearing = Length::mm(80);
    shell.floors = {floor};
    return shell;
}

/// The same with 1.9 kPa of people and 0.5 of boards on it.
inline Shell floored_and_loaded() {
    Shell shell = floored();
    shell.floors[0].live_load = 1.9;
    shell.floors[0].dead_load = 0.5;
    return shell;
}

inline Layout laid(const Shell &shell) {
    Layout layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    return layout;
}

/// Places of joists along the room, left to right.
inline std::vector<double> places(const Layout &layout) {
    std::vector<double> xs;
    for (const Timber &t : layout.timbers)
        if (t.use == TimberUse::joist) xs.push_back(t.from.x);
    return xs;
}

/// Those of one use, in the order of the layout.
inline std::vector<Timber> timbers(const Layout &layout, TimberUse use) {
    std::vector<Timber> all;
    for (const Timber &t : layout.timbers)
        if (t.use == use) all.push_back(t);
    return all;
}

} // namespace roundlay::test
