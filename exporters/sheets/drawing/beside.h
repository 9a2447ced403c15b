// A word beside a thing too small for it, with a line that leads to it.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/text.h"

#include <functional>
#include <optional>

namespace roundlay::sheets {

/// Of thin strokes; it yields to texts.
Path thin_leader(std::vector<Vec2> points);

/// Puts the text, which stands on its middle, level with the area and a little to its right or else to its
/// left, where the board is free and the box suits. Gives where its line begins, in the area; nothing, and
/// nothing added, where there is no room.
std::optional<Vec2> put_beside(Board &board, const Rect &area, Text text,
                               const std::function<bool(const Rect &box)> &suits);

} // namespace roundlay::sheets
