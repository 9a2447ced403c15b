// What each piece is cut from, and what it weighs: once for all lists and sheets.
#pragma once

#include "kernel/layout/wood/body.h"
#include "kernel/stock/lifted.h"

#include <vector>

namespace roundlay {

struct PieceStock {
    Blank blank;       ///< of its stock (kernel/layout/pieces/stock.h): along the log, as it is ordered
    double volume = 0; ///< of the finished piece, mm3
    Lifted lifted;     ///< not rounded
};

/// mm3, one for each of Layout::models.
Indexed<double, Model> volumes_of(const Bodies &bodies);

/// One for each of Layout::pieces. Throws std::logic_error where there is not one volume for each model.
Indexed<PieceStock, Piece> stock_of_pieces(const Shell &shell, const Layout &layout,
                                           const Indexed<double, Model> &model_volumes);

} // namespace roundlay
