// What each cut takes, as operations that know nothing yet of set-ups.
#pragma once

#include "exporters/machining/operation.h"
#include "kernel/boundary/face_words.h"
#include "kernel/geometry/cell.h"

namespace roundlay::machining {

/// In cutting order; those first that take off what the stock has more than the blank. None for a cut that
/// takes nothing of the stock, nor for the round stick, which is the stock's.
std::vector<Operation> taken(const Piece &piece, const RawStock &raw, const FaceNames &names);

/// The cell round all that it takes of the stock.
Cell cell_taken(const Operation &operation, const Cell &stock);

} // namespace roundlay::machining
