// Bores in plans and elevations: each use has its own symbol and its own letter.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/fastenings/bore_marks.h"

namespace roundlay::sheets {

/// From above, never drawn smaller than can be told from the others: a peg is a circle with its centre lines,
/// a rod a filled disc in a circle, a bolt a hexagon, wiring a circle crossed out, a hole as found a dashed
/// circle.
std::vector<Item> bore_symbol(const std::optional<BoreUse> &use, Vec2 centre, double diameter);

/// How far it reaches from its centre on paper.
double symbol_reach(double diameter);

/// The text of a mark, to be put with its middle somewhere.
Text mark_text(const std::string &words);

/// placed_bores with their marks as they are said.
std::vector<PlacedBore> named_bores(const Shell &shell, const Layout &layout, const Words &words);

/// Puts "rod 1" beside a symbol. False where it found no room.
bool put_bore_mark(Board &board, const std::string &mark, Vec2 centre, double diameter);

/// What is called "rod 1" and so on in plans and elevations, and where it stands: of one wall, else all that
/// come out of the foundation.
Table bore_table(const Shell &shell, const Layout &layout, const Words &words,
                 std::optional<Index<WallPlace>> wall);

/// Does the bore come out of the foundation? Holes as found in old wood do not, wherever they are.
bool is_from_foundation(const Shell &shell, const PlacedBore &bore);

} // namespace roundlay::sheets
