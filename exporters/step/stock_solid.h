// The stick that a piece is cut from, as a solid of its own.
#pragma once

#include "exporters/step/product_writer.h"
#include "kernel/layout/layout.h"

namespace roundlay::step {

/// In the frame of the piece, millimetres: the squared stock (kernel/layout/pieces/stock.h); of a round or
/// waned log its round stick, hewn flat where the blank is. No wood of the finished piece lies outside.
PartSolid stock_solid(const Piece &piece);

} // namespace roundlay::step
