#include "kernel/stock/totals.h"

#include <algorithm>
#include <numeric>

namespace roundlay {

namespace {

template <typename Of> double sum(const Indexed<PieceStock, Piece> &stock, const Of &of) {
    return std::accumulate(stock.begin(), stock.end(), 0.0,
                           [&](double so_far, const PieceStock &piece) { return so_far + of(piece); });
}

double length_of(const PieceStock &piece) {
    return piece.blank.length;
}

double squared(const PieceStock &piece) {
    return piece.blank.length * piece.blank.width * piece.blank.height;
}

/// What is told of all pieces. A sum that nothing else asks for is worked out in its row.
std::vector<Figure> figures_of(const Totals &all, const Layout &layout,
                               const Indexed<PieceStock, Piece> &stock) {
    const auto count = [](auto things) { return static_cast<double>(things); };
    return {
        {said("pieces"), FigureOf::things, count(all.pieces), {}},
        {said("distinct pieces"), FigureOf::things, count(all.models), {}},
        {said("islands"), FigureOf::things, count(std::ranges::count_if(layout.pieces, &Piece::island)), {}},
        {said("pegs"), FigureOf::things, count(all.pegs), said("Pegs")},
        {said("length of all blanks"), FigureOf::length, sum(stock, length_of), {}},
        {said("volume of all blanks"), FigureOf::sawn_wood, sum(stock, squared), {}},
        {said("volume of all finished pieces"), FigureOf::wood, all.finished, said("Finished volume")}};
}

} // namespace

Totals totals_of(const Layout &layout, const Indexed<PieceStock, Piece> &stock) {
    Totals all;
    all.pieces = layout.pieces.size();
    all.models = layout.models.size();
    all.pegs = layout.pegs.size();
    for (const auto i : stock.indices()) {
        const auto &[blank, volume, lifted] = stock[i];
        all.finished += volume;
        all.weights_known = all.weights_known && lifted.piece.known;
        all.low_kg += lifted.piece.low_kg;
        all.high_kg += lifted.piece.high_kg;
        if (!all.heaviest || lifted.piece.high_kg > stock[*all.heaviest].lifted.piece.high_kg)
            all.heaviest = i;
        if (!all.longest || blank.length > stock[*all.longest].blank.length) all.longest = i;
    }
    all.figures = figures_of(all, layout, stock);
    return all;
}

Totals totals_of(const Shell &shell, const Layout &layout, const Bodies &bodies) {
    return totals_of(layout, stock_of_pieces(shell, layout, volumes_of(bodies)));
}

} // namespace roundlay
