// What is stated of a router, as it is typed.
#pragma once

#include "exporters/router/router.h"
#include "kernel/measure/measure.h"

#include <string>

namespace CLI {
class App;
}

namespace roundlay {

struct RouterWords {
    std::string board, tool, feed, plunge, spindle, depth_step, safe_height, scribe, margin, spacing, tabs,
        tab;
};

void add_router_options(CLI::App &app, RouterWords &words);

/// A bare number is in the document's units. Throws UsageError where something is no number.
RouterOptions router_options_of(const RouterWords &words, UnitSystem units);

} // namespace roundlay
