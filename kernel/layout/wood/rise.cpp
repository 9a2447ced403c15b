#include "kernel/layout/wood/rise.h"

#include "kernel/layout/wood/placed.h"

#include <algorithm>
#include <limits>

namespace roundlay {

namespace {

constexpr double far_away = std::numeric_limits<double>::max();

constexpr double beside = 1; ///< mm: what stands nearer counts as touching

/// How far `upper` must rise to lie over all of `lower` that stands in its column or touches that; 0 where
/// none does.
double rise_over(const Cell &upper, const Cell &lower) {
    Cell near = lower;
    for (Plane plane : upright_hull(upper)) {
        plane.offset += beside;
        near = clipped(near, plane);
    }
    return near.empty() ? 0 : std::max(0.0, bounds(near).high.z - bounds(upper).low.z);
}

/// All the way up and down, and a little to each side.
Box3 column_of(const Box3 &box) {
    return {{box.low.x - beside, box.low.y - beside, -far_away},
            {box.high.x + beside, box.high.y + beside, far_away}};
}

double rise_over(const PlacedPiece &upper, const PlacedPiece &lower) {
    double most = 0;
    for (std::size_t i = 0; i < upper.cells.size(); ++i) {
        const Box3 column = column_of(upper.boxes[i]);
        for (std::size_t j = 0; j < lower.cells.size(); ++j)
            if (boxes_meet(column, lower.boxes[j]) && lower.boxes[j].high.z - upper.boxes[i].low.z > most)
                most = std::max(most, rise_over(upper.cells[i], lower.cells[j]));
    }
    return most;
}

} // namespace

Indexed<double, Piece> rises_to_clear(const Layout &layout, const Bodies &bodies) {
    Indexed<PlacedPiece, Piece> pieces;
    for (const Piece &piece : layout.pieces)
        pieces.push_back(placed(bodies[piece.model], piece.frame));
    Indexed<double, Piece> rises(pieces.size(), 0);
    for (const Index<Piece> i : layout.pieces.indices()) {
        const Box3 column = column_of(pieces[i].box);
        for (const Index<Piece> j : layout.pieces.indices())
            if (layout.pieces[j].raise < layout.pieces[i].raise && boxes_meet(column, pieces[j].box) &&
                pieces[j].box.high.z > pieces[i].box.low.z)
                rises[i] = std::max(rises[i], rise_over(pieces[i], pieces[j]));
    }
    return rises;
}

} // namespace roundlay
