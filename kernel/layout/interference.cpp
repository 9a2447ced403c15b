#include "kernel/layout/interference.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace roundlay {

namespace {

struct PlacedPiece {
    std::vector<Cell> cells; ///< world
    std::vector<Box3> boxes;
    Box3 box;
};

/// Of a piece of which no wood is left: a box that meets none.
Box3 joined(const std::vector<Box3> &boxes) {
    constexpr double big = std::numeric_limits<double>::max();
    Box3 all{{big, big, big}, {-big, -big, -big}};
    for (const Box3 &b : boxes) {
        all.low = {std::min(all.low.x, b.low.x), std::min(all.low.y, b.low.y), std::min(all.low.z, b.low.z)};
        all.high = {std::max(all.high.x, b.high.x), std::max(all.high.y, b.high.y), std::max(all.high.z, b.high.z)};
    }
    return all;
}

std::vector<PlacedPiece> placed(const Layout &layout, const std::vector<Body> &bodies) {
    std::vector<PlacedPiece> all;
    all.reserve(layout.pieces.size());
    for (const Piece &piece : layout.pieces) {
        PlacedPiece p;
        for (const Cell &cell : bodies[static_cast<std::size_t>(piece.model)].cells) {
            p.cells.push_back(moved(cell, piece.frame));
            p.boxes.push_back(bounds(p.cells.back()));
        }
        p.box = joined(p.boxes);
        all.push_back(std::move(p));
    }
    return all;
}

bool boxes_meet(const Box3 &a, const Box3 &b) {
    return a.high.x > b.low.x && b.high.x > a.low.x && a.high.y > b.low.y && b.high.y > a.low.y &&
           a.high.z > b.low.z && b.high.z > a.low.z;
}

double shared(const PlacedPiece &a, const PlacedPiece &b) {
    double sum = 0;
    for (std::size_t i = 0; i < a.cells.size(); ++i)
        for (std::size_t j = 0; j < b.cells.size(); ++j)
            if (boxes_meet(a.boxes[i], b.boxes[j])) sum += common_volume(a.cells[i], b.cells[j]);
    return sum;
}

/// Pairs whose boxes meet, swept along x.
template <typename Visit> void each_near_pair(const std::vector<PlacedPiece> &all, Visit visit) {
    std::vector<int> order(all.size());
    std::iota(order.begin(), order.end(), 0);
    const auto box = [&](int i) -> const Box3 & { return all[static_cast<std::size_t>(i)].box; };
    std::sort(order.begin(), order.end(), [&](int i, int j) { return box(i).low.x < box(j).low.x; });
    for (std::size_t i = 0; i < order.size(); ++i)
        for (std::size_t j = i + 1; j < order.size() && box(order[j]).low.x < box(order[i]).high.x; ++j)
            if (boxes_meet(box(order[i]), box(order[j])))
                visit(std::min(order[i], order[j]), std::max(order[i], order[j]));
}

/// The outline of a convex cell seen from above, as upright planes: its wall all the way up.
std::vector<Plane> upright_hull(const Cell &cell) {
    std::vector<Vec2> points;
    for (const CellFace &face : cell.faces)
        for (const Vec3 &p : face.ring) points.push_back({p.x, p.y});
    std::sort(points.begin(), points.end(), [](Vec2 a, Vec2 b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
    std::vector<Vec2> hull;
    for (int pass = 0; pass < 2; ++pass) { // lower chain, then upper chain
        const std::size_t start = hull.size();
        for (const Vec2 &p : points) {
            while (hull.size() >= start + 2 &&
                   cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= tolerance::weld)
                hull.pop_back();
            hull.push_back(p);
        }
        hull.pop_back();
        std::reverse(points.begin(), points.end());
    }
    std::vector<Plane> planes;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Vec2 a = hull[i], d = hull[(i + 1) % hull.size()] - a;
        const Vec3 n = (1 / length(d)) * Vec3{d.y, -d.x, 0};
        planes.push_back({n, n.x * a.x + n.y * a.y});
    }
    return planes;
}

/// Cuts the wood straight over a cell out of `wood` and says how much that was.
double taken_over(const Cell &cell, std::vector<Cell> &wood) {
    std::vector<Plane> above = upright_hull(cell);
    for (const CellFace &face : cell.faces)
        if (face.plane.normal.z < -tolerance::weld) above.push_back(face.plane);
    double sum = 0;
    for (const Cell &piece : wood) {
        if (std::any_of(above.begin(), above.end(), [&](const Plane &plane) { return lies_beyond(piece, plane); })) continue;
        Cell common = piece;
        for (const Plane &plane : above) common = clipped(common, plane);
        sum += volume(common);
    }
    if (sum > 0) wood = without(std::move(wood), above);
    return sum;
}

/// Wood of `earlier` that lies straight over `later`'s cells, each of it once though it lie over several.
double over(const PlacedPiece &earlier, const PlacedPiece &later) {
    double sum = 0;
    std::vector<Cell> wood;
    for (std::size_t j = 0; j < later.cells.size(); ++j) {
        Box3 column = later.boxes[j];
        column.high.z = std::numeric_limits<double>::max();
        const bool any = std::any_of(earlier.boxes.begin(), earlier.boxes.end(),
                                     [&](const Box3 &b) { return boxes_meet(b, column); });
        if (!any) continue;
        if (wood.empty()) wood = earlier.cells;
        sum += taken_over(later.cells[j], wood);
        if (wood.empty()) break;
    }
    return sum;
}

} // namespace

std::vector<Body> bodies_of(const Layout &layout) {
    std::vector<Body> bodies;
    bodies.reserve(layout.models.size());
    for (const Model &model : layout.models)
        bodies.push_back(body_of(layout.pieces[static_cast<std::size_t>(model.pieces.front())]));
    return bodies;
}

std::vector<Overlap> overlaps(const Layout &layout, const std::vector<Body> &bodies) {
    const std::vector<PlacedPiece> all = placed(layout, bodies);
    std::vector<Overlap> found;
    each_near_pair(all, [&](int a, int b) {
        const double v = shared(all[static_cast<std::size_t>(a)], all[static_cast<std::size_t>(b)]);
        if (v >= tolerance::overlap) found.push_back({a, b, v});
    });
    std::sort(found.begin(), found.end(), [](const Overlap &p, const Overlap &q) {
        return std::pair(p.a, p.b) < std::pair(q.a, q.b);
    });
    return found;
}

std::vector<Blocked> blocked_on_the_way_down(const Layout &layout, const std::vector<Body> &bodies) {
    const std::vector<PlacedPiece> all = placed(layout, bodies);
    std::vector<Blocked> found;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = 0; j < all.size(); ++j) {
            if (layout.pieces[i].raise >= layout.pieces[j].raise) continue; // i is raised before j
            Box3 column = all[j].box;
            column.high.z = std::numeric_limits<double>::max();
            if (!boxes_meet(all[i].box, column)) continue;
            const double v = over(all[i], all[j]);
            if (v >= tolerance::overlap) found.push_back({static_cast<int>(j), static_cast<int>(i), v});
        }
    return found;
}

} // namespace roundlay
