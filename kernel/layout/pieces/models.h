// Which pieces are alike, and the order of the raise.
#pragma once

#include "kernel/layout/model.h"
#include "kernel/layout/piece.h"

namespace roundlay {

/// Groups pieces that are made alike (`alike` of pieces/piece_shape.h), and puts down with each which model
/// it is of.
Indexed<Model> group_models(Indexed<Piece> &pieces);

/// Lowest first; within a height by wall and number. Every piece then comes down on what it rests on.
/// New wood in a mended log has the number of the log that it is lifted with, and stands behind it in
/// `pieces`. `centres` are the heights of the pieces' logs in their middle.
void order_raise(Indexed<Piece> &pieces, const Indexed<double, Piece> &centres);

} // namespace roundlay
