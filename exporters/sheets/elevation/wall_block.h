// One elevation of one wall at one scale.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/shell_view/scenes.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct WallWanted {
    const Shell *shell = nullptr;
    const Layout *layout = nullptr;
    const SeenShell *seen = nullptr;
    const Words *words = nullptr;
    Index<WallPlace> wall;
    WallSide side = WallSide::outside;
    const Scale *scale = nullptr;
    double lettering = 2.5;  ///< of the tags
    bool bores_along = true; ///< middles of bores among the measures along the wall; else in their table only
};

struct WallBlock {
    Block block;
    std::vector<std::string> without_tag;  ///< pieces whose tag found no room
    std::vector<std::string> without_size; ///< openings whose name and size found none, with both
};

WallBlock wall_block(const WallWanted &wanted);

} // namespace roundlay::sheets
