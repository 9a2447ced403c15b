// Arrows and letters of key figures.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/shell_view/scenes.h"

#include <string>

namespace roundlay::sheets {

/// Wood seen from one direction: flat coordinates of the projection, millimetres of wood, become paper.
struct FigureView {
    Projection projection;
    double scale = 1;
    Vec2 at; ///< where the wood's origin comes to lie

    Vec2 on(Vec3 p) const { return at + scale * projection.flat(p); }
    void add_wood(Board &board, const Polyhedron &solid) const;
};

/// What of the log lies between two places along it.
Polyhedron stretch_of_wood(const Body &body, double from, double to);

void add_stroke(Board &board, Vec2 a, Vec2 b, Line line = Line::dimension);

/// A dimension with arrows at both ends, from outside where there is little room, and its letter beside it.
void add_measure(Board &board, Vec2 a, Vec2 b, const std::string &letter);

/// The board as a block with a little air around it.
Block figure_block(Board board);

} // namespace roundlay::sheets
