#include "kernel/review/lifted.h"

#include "kernel/layout/pieces/stock.h"
#include "kernel/trade/log_volume.h"

namespace roundlay {

namespace {

const RoundCut *round_stick(const Piece &piece) {
    for (const Cut &cut : piece.cuts)
        if (const auto *round = std::get_if<RoundCut>(&cut)) return round;
    return nullptr;
}

} // namespace

double small_end(const Piece &piece, const Blank &stock) {
    const RoundCut *round = round_stick(piece);
    return round ? 2 * round->radius : least_round(stock.width, stock.height);
}

Lifted lifted_of_length(const Shell &shell, const Piece &piece, const Blank &stock) {
    Lifted l;
    l.log = weigh(tapered_log_volume(small_end(piece, stock), stock.length), shell.wood);
    if (!round_stick(piece)) l.blank = weigh(stock.length * stock.width * stock.height, shell.wood);
    return l;
}

Lifted lifted(const Shell &shell, const Piece &piece, double volume) {
    Lifted l = lifted_of_length(shell, piece, stock_of(piece).size);
    l.piece = weigh(volume, shell.wood);
    return l;
}

Said weight_note(const WeightEstimate &weight) {
    if (!weight.known) return said("no weight: %1", weight.basis);
    return said(
        "%1 Round logs: Smalian's volume of the least small end, growing 1/2 in per 4 ft to the butt, "
        "without bark. %2",
        weight.basis, phrase(weight_caution));
}

} // namespace roundlay
