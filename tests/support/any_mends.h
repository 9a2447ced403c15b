// Random mends in a shell that stands. Inside a rapidcheck property.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/shell/shell.h"

#include <map>
#include <string>

namespace roundlay::test {

/// How often mends were refused, by code, of how many that were drawn.
struct MendsDrawn {
    int drawn = 0, kept = 0;
    std::map<std::string, int> refused;
};

/// The shell with up to `most` mends of any kind in logs of its walls; those that cannot be are left out and
/// counted. `whole`: its layout without them.
Shell with_any_mends(const Shell &shell, const Layout &whole, int most, MendsDrawn &told);

} // namespace roundlay::test
