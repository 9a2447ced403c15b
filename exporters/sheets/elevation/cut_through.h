// Pieces cut through across a wall, and what lies behind.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/shell_view/scenes.h"

#include <optional>

namespace roundlay::sheets {

/// What of a piece lies from there on toward the wall's left end, in that wall's frame; nothing where none
/// does.
std::optional<Polyhedron> beyond(const Layout &layout, const Bodies &bodies, Index<WallPlace> wall,
                                 const Piece &piece, double x);

/// Wood that is cut, and what is seen behind it, so many millimetres on paper for one of wood.
void add_wood(Board &board, const SeenShell &seen, double scale);

} // namespace roundlay::sheets
