#include "kernel/stock/piece_stock.h"

#include "kernel/layout/pieces/stock.h"

#include <stdexcept>

namespace roundlay {

Indexed<double, Model> volumes_of(const Bodies &bodies) {
    Indexed<double, Model> volumes;
    for (const Body &body : bodies)
        volumes.push_back(body.volume);
    return volumes;
}

Indexed<PieceStock, Piece> stock_of_pieces(const Shell &shell, const Layout &layout,
                                           const Indexed<double, Model> &model_volumes) {
    if (model_volumes.size() != layout.models.size())
        throw std::logic_error("sums over pieces need one volume for each distinct piece");
    Indexed<PieceStock, Piece> all;
    for (const Piece &piece : layout.pieces) {
        const double volume = model_volumes.at(piece.model);
        all.push_back({stock_of(piece).size, volume, lifted(shell, piece, volume)});
    }
    return all;
}

} // namespace roundlay
