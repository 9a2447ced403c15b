// Convex cells: what clipping in doubles works with.
#pragma once

#include "kernel/geometry/polyhedron.h"

#include <optional>
#include <vector>

namespace roundlay {

/// One side of a convex cell.
struct CellFace {
    Plane plane;            ///< outward
    std::vector<Vec3> ring; ///< counter-clockwise seen from outside
};

/// A convex solid given by its faces. Empty when it has none.
struct Cell {
    std::vector<CellFace> faces;
    bool empty() const { return faces.empty(); }
};

Cell box_cell(const Box3 &box);

/// Does no more than a sliver of the cell lie on the wood side of the plane?
bool lies_beyond(const Cell &cell, const Plane &plane);

/// The part of the cell on the wood side of the plane (normal . p <= offset). Slivers thinner than
/// `thinnest` are dropped. May be empty.
Cell clipped(const Cell &cell, const Plane &plane);

struct SplitCell {
    Cell inside; ///< wood side of the plane
    Cell outside;
};
SplitCell split(const Cell &cell, const Plane &plane);

double volume(const Cell &cell);
Vec3 centroid(const Cell &cell);
Box3 bounds(const Cell &cell);
Cell moved(const Cell &cell, const Frame &frame); ///< from the frame's own coordinates to the world

/// The outline of a convex cell seen from above, as upright planes: its wall all the way up and down.
std::vector<Plane> upright_hull(const Cell &cell);

/// Volume that two convex cells share, mm3.
double common_volume(const Cell &a, const Cell &b);

/// Takes a convex region (the meet of half-spaces) out of a set of disjoint cells.
std::vector<Cell> without(std::vector<Cell> cells, const std::vector<Plane> &region);

/// The border of the union of disjoint cells that touch along faces. Coplanar faces are merged, vertices
/// closer than `weld` are one.
Polyhedron border_of(const std::vector<Cell> &cells);

} // namespace roundlay
