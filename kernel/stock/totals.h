// What all pieces come to.
#pragma once

#include "kernel/stock/piece_stock.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace roundlay {

/// Millimetres, mm3, kilograms as worked out: not rounded.
struct Totals {
    std::size_t pieces = 0, models = 0, islands = 0, pegs = 0;
    double blank_length = 0, blanks = 0; ///< of the sticks that are ordered, without rounding up
    double finished = 0;
    bool weights_known = true;                     ///< of every one: a sum in which one is missing is too low
    double low_kg = 0, high_kg = 0;                ///< of the finished pieces
    std::optional<Index<Piece>> heaviest, longest; ///< the first of equals
};

Totals totals_of(const Layout &layout, const Indexed<PieceStock, Piece> &stock);
Totals totals_of(const Shell &shell, const Layout &layout, const Bodies &bodies);

} // namespace roundlay
