#include "kernel/stock/totals.h"

namespace roundlay {

Totals totals_of(const Layout &layout, const Indexed<PieceStock, Piece> &stock) {
    Totals all;
    all.pieces = layout.pieces.size();
    all.models = layout.models.size();
    all.pegs = layout.pegs.size();
    for (const auto i : stock.indices()) {
        const auto &[blank, volume, lifted] = stock[i];
        all.islands += layout.pieces[i].island ? 1U : 0U;
        all.blank_length += blank.length;
        all.blanks += blank.length * blank.width * blank.height;
        all.finished += volume;
        all.weights_known = all.weights_known && lifted.piece.known;
        all.low_kg += lifted.piece.low_kg;
        all.high_kg += lifted.piece.high_kg;
        if (!all.heaviest || lifted.piece.high_kg > stock[*all.heaviest].lifted.piece.high_kg)
            all.heaviest = i;
        if (!all.longest || blank.length > stock[*all.longest].blank.length) all.longest = i;
    }
    return all;
}

Totals totals_of(const Shell &shell, const Layout &layout, const Bodies &bodies) {
    return totals_of(layout, stock_of_pieces(shell, layout, volumes_of(bodies)));
}

} // namespace roundlay
