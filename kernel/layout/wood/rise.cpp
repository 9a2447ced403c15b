#include "kernel/layout/wood/rise.h"

#include "kernel/layout/wood/placed.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace roundlay {

namespace {

constexpr double far_away = std::numeric_limits<double>::max();

constexpr double beside = 1; ///< mm: what stands nearer counts as touching

/// The sides of its column, and what stands so near that it touches.
std::vector<Plane> sides_of_column(const Cell &cell) {
    std::vector<Plane> sides = upright_hull(cell);
    for (Plane &side : sides)
        side.offset += beside;
    return sides;
}

/// How high what of `wood` lies between those sides reaches; nothing where none does.
std::optional<double> top_between(const std::vector<Plane> &sides, const Cell &wood) {
    Cell near = wood;
    for (const Plane &side : sides) {
        near = clipped(near, side);
        if (near.empty()) return std::nullopt;
    }
    return bounds(near).high.z;
}

/// All the way up and down, and a little to each side.
Box3 column_of(const Box3 &box) {
    return {{box.low.x - beside, box.low.y - beside, -far_away},
            {box.high.x + beside, box.high.y + beside, far_away}};
}

/// How far `upper` must rise to lie over all of `lower` that stands in its column or touches that; 0 where
/// none does.
double rise_over(const PlacedPiece &upper, const PlacedPiece &lower) {
    double most = 0;
    for (std::size_t i = 0; i < upper.cells.size(); ++i) {
        const Box3 column = column_of(upper.boxes[i]);
        const double under = upper.boxes[i].low.z;
        std::vector<Plane> sides;
        for (std::size_t j = 0; j < lower.cells.size(); ++j) {
            if (!boxes_meet(column, lower.boxes[j]) || lower.boxes[j].high.z - under <= most) continue;
            if (sides.empty()) sides = sides_of_column(upper.cells[i]);
            most = std::max(most, top_between(sides, lower.cells[j]).value_or(under) - under);
        }
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
            if (layout.pieces[j].raise < layout.pieces[i].raise &&
                log_with(layout.pieces, i) != log_with(layout.pieces, j) &&
                boxes_meet(column, pieces[j].box) && pieces[j].box.high.z > pieces[i].box.low.z)
                rises[i] = std::max(rises[i], rise_over(pieces[i], pieces[j]));
    }
    return rises;
}

} // namespace roundlay
