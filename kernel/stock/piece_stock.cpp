#include "kernel/stock/piece_stock.h"

#include "kernel/layout/pieces/stock.h"

#include <stdexcept>

namespace roundlay {

std::vector<double> volumes_of(const std::vector<Body> &bodies) {
    std::vector<double> volumes;
    for (const Body &body : bodies)
        volumes.push_back(body.volume);
    return volumes;
}

std::vector<PieceStock> stock_of_pieces(const Shell &shell, const Layout &layout,
                                        const std::vector<double> &model_volumes) {
    if (model_volumes.size() != layout.models.size())
        throw std::logic_error("sums over pieces need one volume for each distinct piece");
    std::vector<PieceStock> all;
    for (const Piece &piece : layout.pieces) {
        const double volume = model_volumes.at(static_cast<std::size_t>(piece.model));
        all.push_back({stock_of(piece).size, volume, lifted(shell, piece, volume)});
    }
    return all;
}

} // namespace roundlay
