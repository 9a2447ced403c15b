// A wall as it stands by the plan, or a stretch of it, every log with its tag: what a form is filled in by.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/form/form_logs.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/shell_view/scenes.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct SketchWanted {
    const Shell &shell;
    const Layout &layout;
    const SeenShell &seen;            ///< the wall from that side
    const std::vector<FormLog> &logs; ///< of the wall
    const Record &record;
    const Words &words;
    Index<WallPlace> wall;
    WallSide side = WallSide::outside;
};

/// From where to where along the wall, from its left outside corner.
struct WallStretch {
    double from = 0, to = 0;
    bool whole_at_from = true,
         whole_at_to = true; ///< its end is the wall's; else it goes on on another sheet
};

struct Sketch {
    Block block;
    std::vector<std::string> without_tag; ///< of logs that have no room for it
};

Sketch sketch_of(const SketchWanted &wanted, const WallStretch &stretch, const Scale &scale,
                 const std::string &caption);

/// All that is seen of the wall, overhanging ends among it, from left to right.
WallStretch all_of(const SketchWanted &wanted);

} // namespace roundlay::sheets
