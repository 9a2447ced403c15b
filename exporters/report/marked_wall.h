// An elevation of one wall, or of a stretch of it, with marks on its logs: hatches, letters, symbols.
#pragma once

#include "exporters/report/hatch.h"
#include "exporters/report/log_outline.h"
#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/shell_view/scenes.h"
#include "kernel/shell/shell.h"

#include <functional>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// An area in the wall's x and z, convex.
struct MarkedArea {
    std::vector<Vec2> outline;
    Hatch hatch = Hatch::none;
    std::string words;   ///< on it, where they have room; empty: none
    bool edged = false;  ///< with its own outline
    bool hidden = false; ///< that outline dashed: it is no wood of this wall, or not on the side that is seen
    bool must = false;   ///< words that find no room on it are told
};

struct MarkedPoint {
    Vec2 at; ///< in the wall's x and z
    std::function<std::vector<Item>(Vec2 paper)> symbol;
};

struct MarkedWall {
    const Shell &shell;
    const Layout &layout;
    const SeenShell &seen;
    const Words &words;
    Index<WallPlace> wall;
    WallSide side = WallSide::outside;
    std::vector<MarkedArea> areas; ///< what is smaller comes later
    std::vector<MarkedPoint> points;
    std::string caption;
    bool corner_names = true; ///< under it; `names`: what corners are called, by the plan's name
    std::function<std::string(const std::string &corner)> corner_called;
};

struct MarkedBlock {
    Block block;
    std::vector<std::string> without_room; ///< words of areas that must have them
};

/// All that is seen of it or marked, overhanging ends among it.
Along seen_along(const MarkedWall &wall);

MarkedBlock drawn(const MarkedWall &wall, const Along &stretch, double scale);

} // namespace roundlay::sheets
