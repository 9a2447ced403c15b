// Openings that a state of the house closes or cuts, and the logs that go and come with them.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay {

struct OpeningChange {
    std::string name, wall;
    bool closed = false;            ///< else it is new
    std::vector<std::string> goes;  ///< tags, as found, of old logs beside it that stand no more
    std::vector<std::string> comes; ///< tags, in the state, of new logs where it was; of a new one of the
                                    ///< logs that end at it
};

/// By the names of openings and their walls: first those that are closed, then those that are new.
std::vector<OpeningChange> openings_changed(const Shell &found, const Layout &found_layout, const Shell &now,
                                            const Layout &now_layout);

} // namespace roundlay
