// How each number of a form is measured, drawn once from the real logs: the letters in it are those in the
// corners of the boxes.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/set/draft.h"
#include "exporters/sheets/shell_view/scenes.h"

#include <string>

namespace roundlay::sheets {

/// Along a log of a wall, seen from that side and from above: a height and b width at its shoulders, c over
/// all, d between shoulders, e a place from its end, f its height over a jamb.
Block key_of_log(const Draft &draft, Index<Piece> piece, WallSide side);

/// An end of a log in a corner, seen on both faces: a to d the heights of its tail, e its overhang, f its
/// gap.
Block key_of_end(const Draft &draft, Index<Piece> piece, End end, const Words &words);

/// Of a corner: g its height over the level plane, h and k how its arris leans out on the faces of both its
/// walls, m over which height.
Block key_of_arris(const Words &words, const std::string &first, const std::string &second);

} // namespace roundlay::sheets
