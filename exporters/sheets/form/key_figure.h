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

/// An end of a log in a corner, seen on both faces: n to r the heights of its tail, s its overhang, t its
/// gap.
Block key_of_end(const Draft &draft, Index<Piece> piece, End end, const Words &words);

/// Of an opening, on the outside face, from the corner that is measured from: 1 and 2 to its near jamb at the
/// sill and at the head, 3 and 4 to its far jamb, 5 its width, 6 its height, 7 and 8 the levels of its
/// underside and its top.
Block key_of_opening(const Words &words);

/// Of a corner: u its height over the level plane, v and w how its arris leans on the faces of both its
/// walls, out of them with +, x over which height. No letter of it is one of a wall's.
Block key_of_arris(const Words &words, const std::string &first, const std::string &second);

} // namespace roundlay::sheets
