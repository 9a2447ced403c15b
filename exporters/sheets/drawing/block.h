// A part of a drawing that is laid out by itself and then put somewhere on a sheet.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <vector>

namespace roundlay::sheets {

struct Block {
    Rect room;               ///< what it takes, with the air around it
    std::vector<Item> items; ///< in the same coordinates
};

Item moved(Item item, Vec2 by);
Block moved(Block block, Vec2 by);

/// The block with its room's lower left corner there.
Block placed(Block block, Vec2 lower_left);

/// What the item covers; empty for a link.
Rect bounds(const Item &item);
Rect bounds(const std::vector<Item> &items);

} // namespace roundlay::sheets
