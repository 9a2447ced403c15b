// A room with joists in it, as tests of floors start from.
#pragma once

#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <vector>

namespace roundlay::test {

/// `floored` with 1.9 kPa of people and 0.5 of boards on it.
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
