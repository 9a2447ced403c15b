#include "kernel/stock/totals.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Over all sticks that are ordered.
template <typename Of>
double sum(const Layout &layout, const Indexed<PieceStock, Piece> &stock, const Of &of) {
    double all = 0;
    for (const auto i : stock.indices())
        if (!is_old_wood(layout.pieces[i])) all += of(stock[i]);
    return all;
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
        {said("length of all blanks"), FigureOf::length, sum(layout, stock, length_of), {}},
        {said("volume of all blanks"), FigureOf::sawn_wood, sum(layout, stock, squared), {}},
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
        if (!lifted.piece.known) all.not_weighed.push_back(i);
        all.low_kg += lifted.piece.low_kg;
        all.high_kg += lifted.piece.high_kg;
        if (!all.heaviest || lifted.piece.high_kg > stock[*all.heaviest].lifted.piece.high_kg)
            all.heaviest = i;
        if (!all.longest || blank.length > stock[*all.longest].blank.length) all.longest = i;
    }
    if (!all.weights_known()) all.heaviest.reset();
    all.figures = figures_of(all, layout, stock);
    return all;
}

Said not_weighed_words(const Totals &totals, const Layout &layout) {
    const std::string &first = layout.pieces[totals.not_weighed.front()].tag;
    if (totals.not_weighed.size() == 1)
        return said("not known: no values are known of the wood of %1. Weigh before lifting.", first);
    return said("not known: no values are known of the wood of %1 pieces, of which %2 is the first. Weigh "
                "before lifting.",
                totals.not_weighed.size(), first);
}

Totals totals_of(const Shell &shell, const Layout &layout, const Bodies &bodies) {
    return totals_of(layout, stock_of_pieces(shell, layout, volumes_of(bodies)));
}

} // namespace roundlay
