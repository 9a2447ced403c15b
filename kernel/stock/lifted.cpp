#include "kernel/stock/lifted.h"

#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/trade/log_volume.h"

#include <algorithm>

namespace roundlay {

Wood weighed_wood(const Shell &shell, const Piece &piece) {
    Wood wood = wood_of(shell, piece.species);
    if (piece.fabric == Fabric::replacement || piece.mends) wood.moisture.reset();
    return wood;
}

double small_end(const Piece &piece, const Blank &stock) {
    const RoundCut *round = hewn_faces(piece).round;
    return round ? 2 * round->radius : least_round(stock.width, stock.height);
}

Lifted lifted_of_length(const Shell &shell, const Piece &piece, const Blank &stock) {
    Lifted l;
    l.log = weigh(tapered_log_volume(small_end(piece, stock), stock.length), weighed_wood(shell, piece));
    if (!hewn_faces(piece).round)
        l.blank = weigh(stock.length * stock.width * stock.height, weighed_wood(shell, piece));
    return l;
}

Lifted lifted(const Shell &shell, const Piece &piece, double volume) {
    Lifted l = lifted_of_length(shell, piece, stock_of(piece).size);
    l.piece = weigh(volume, weighed_wood(shell, piece));
    return l;
}

std::vector<Said> weight_bases(const Shell &shell, const Indexed<Piece> &pieces) {
    std::vector<Wood> woods;
    std::vector<Said> known, unknown;
    for (const Piece &piece : pieces) {
        const Wood wood = weighed_wood(shell, piece);
        if (std::ranges::find(woods, wood) != woods.end()) continue;
        woods.push_back(wood);
        const WeightEstimate weight = weigh(0, wood);
        (weight.known ? known : unknown).push_back(weight.basis);
    }
    return known.empty() ? unknown : known;
}

Said weight_note(const WeightEstimate &weight) {
    if (!weight.known) return said("no weight: %1", weight.basis);
    return said(
        "%1 Round logs: Smalian's volume of the least small end, growing 1/2 in per 4 ft to the butt, "
        "without bark. %2",
        weight.basis, phrase(weight_caution));
}

} // namespace roundlay
