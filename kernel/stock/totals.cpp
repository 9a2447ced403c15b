#include "kernel/stock/totals.h"

#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/trade/log_volume.h"

#include <algorithm>

namespace roundlay {

namespace {

/// What is told of all sticks that are ordered: nobody saws boards' feet out of logs that stay round.
struct Ordered {
    double length = 0, squared = 0, round = 0;
};

Ordered ordered(const Layout &layout, const Indexed<PieceStock, Piece> &stock) {
    Ordered all;
    for (const auto i : stock.indices()) {
        const Piece &piece = layout.pieces[i];
        if (is_old_wood(piece)) continue;
        const Blank &blank = stock[i].blank;
        all.length += blank.length;
        if (hewn_faces(piece).round)
            all.round += tapered_log_volume(small_end(piece, blank), blank.length);
        else
            all.squared += blank.length * blank.width * blank.height;
    }
    return all;
}

/// What is told of all pieces. A sum that nothing else asks for is worked out in its row.
std::vector<Figure> figures_of(const Totals &all, const Layout &layout,
                               const Indexed<PieceStock, Piece> &stock) {
    const auto count = [](auto things) { return static_cast<double>(things); };
    const Ordered sticks = ordered(layout, stock);
    std::vector<Figure> figures{
        {said("pieces"), FigureOf::things, count(all.pieces), {}},
        {said("distinct pieces"), FigureOf::things, count(all.models), {}},
        {said("islands"), FigureOf::things, count(std::ranges::count_if(layout.pieces, &Piece::island)), {}},
        {said("pegs"), FigureOf::things, count(all.pegs), said("Pegs")},
        {said("length of all blanks"), FigureOf::length, sticks.length, {}}};
    const auto timbers =
        std::ranges::count_if(layout.pieces, [](const Piece &p) { return p.timber.has_value(); });
    if (timbers > 0)
        figures.insert(figures.begin() + 1,
                       {said("of these joists, beams and trimmers"), FigureOf::things, count(timbers), {}});
    if (sticks.squared > 0)
        figures.push_back({said("volume of all squared blanks"), FigureOf::sawn_wood, sticks.squared, {}});
    if (sticks.round > 0)
        figures.push_back(
            {said("volume of all round logs, growing to the butt"), FigureOf::wood, sticks.round, {}});
    figures.push_back(
        {said("volume of all finished pieces"), FigureOf::wood, all.finished, said("Finished volume")});
    return figures;
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
