// Which pieces are alike, and the order of the raise.
#pragma once

#include "kernel/layout/model.h"
#include "kernel/layout/piece.h"

namespace roundlay {

/// Groups pieces that are made alike (`alike` of pieces/piece_shape.h), and puts down with each which model
/// it is of.
std::vector<Model> group_models(std::vector<Piece> &pieces);

/// Lowest first; within a height by wall and number. Every piece then comes down on what it rests on.
/// `centres` are the heights of the pieces' logs in their middle.
void order_raise(std::vector<Piece> &pieces, const std::vector<double> &centres);

} // namespace roundlay
