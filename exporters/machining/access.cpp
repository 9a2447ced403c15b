#include "exporters/machining/access.h"

#include "exporters/machining/raw_stock.h"
#include "exporters/machining/taken.h"
#include "exporters/machining/tilt.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::machining {

namespace {

constexpr double square = 1e-9; ///< of unit vectors
constexpr double degrees = 180 / std::numbers::pi;

/// Does what is taken go on that way until it is out of the log?
bool is_open(const Operation &operation, Vec3 way) {
    if (operation.bore)
        return operation.bore->through ? std::abs(dot(way, operation.bore->along)) > 1 - square
                                       : dot(way, operation.bore->along) < square - 1;
    for (const TakenSide &side : operation.sides)
        if (dot(side.plane.normal, way) > square) return false;
    if (!operation.round) return true;
    return way.z < square - 1 || std::abs(dot(way, operation.round->along)) > 1 - square;
}

/// How far the furthest place of a cell lies that way.
double furthest(const Cell &cell, Vec3 way) {
    double most = -HUGE_VAL;
    for (const CellFace &face : cell.faces)
        for (const Vec3 &corner : face.ring)
            most = std::max(most, dot(corner, way));
    return most;
}

bool same(Vec3 a, Vec3 b) {
    return length(a - b) < tolerance::weld;
}

/// The edge that two faces of a cell share.
std::optional<InsideCorner> shared_edge(const CellFace &a, const CellFace &b) {
    const auto in_b = [&](Vec3 p) { return std::ranges::any_of(b.ring, [&](Vec3 q) { return same(p, q); }); };
    for (std::size_t i = 0; i < a.ring.size(); ++i) {
        const Vec3 from = a.ring[i], to = a.ring[(i + 1) % a.ring.size()];
        if (!same(from, to) && in_b(from) && in_b(to)) {
            const double between = std::acos(std::clamp(dot(a.plane.normal, b.plane.normal), -1.0, 1.0));
            return InsideCorner{from, to, 180 - between * degrees};
        }
    }
    return {};
}

bool is_side_of(const Operation &operation, const CellFace &face) {
    return std::ranges::any_of(operation.sides, [&](const TakenSide &side) {
        return same(side.plane.normal, face.plane.normal) &&
               std::abs(side.plane.offset - face.plane.offset) < tolerance::weld;
    });
}

std::vector<InsideCorner> corners_of(const Operation &operation, const Cell &cell) {
    std::vector<InsideCorner> corners;
    for (std::size_t a = 0; a < cell.faces.size(); ++a)
        for (std::size_t b = a + 1; b < cell.faces.size(); ++b)
            if (is_side_of(operation, cell.faces[a]) && is_side_of(operation, cell.faces[b]))
                if (const auto edge = shared_edge(cell.faces[a], cell.faces[b])) corners.push_back(*edge);
    return corners;
}

bool is_end(LogFace side) {
    return side == LogFace::datum_end || side == LogFace::far_end;
}

} // namespace

void find_access(Operation &operation, const Cell &stock) {
    const Cell cell = cell_taken(operation, stock);
    for (const LogFace side : all_sides) {
        const Vec3 way = outward(side);
        if (!is_open(operation, way)) continue;
        if (is_end(side) && !operation.access.empty()) continue; // along the log only where nothing else does
        const double reach = furthest(stock, way) + furthest(cell, -way);
        operation.access.push_back({side, reach, least_tilt(operation, cell, way)});
    }
    const auto first = [&](LogFace side) { // where a person sets the bore out
        return operation.bore && dot(outward(side), operation.bore->along) > 0;
    };
    std::ranges::stable_sort(operation.access, [&](const AccessSide &a, const AccessSide &b) {
        if (first(a.side) != first(b.side)) return first(b.side);
        if (std::abs(a.tilt - b.tilt) > 1e-6) return a.tilt < b.tilt;
        return a.reach < b.reach - tolerance::weld;
    });
    if (operation.kind == OperationKind::slot && operation.access.size() <= 1)
        operation.kind = OperationKind::pocket;
    operation.corners = corners_of(operation, cell);
}

std::optional<double> inside_radius(const Operation &operation, LogFace from) {
    if (operation.bore) return {};
    const Vec3 way = outward(from);
    for (const InsideCorner &corner : operation.corners)
        if (std::abs(dot(unit(corner.to - corner.from), way)) > 0.5) return 0;
    return operation.round ? std::optional(operation.round->radius) : std::nullopt;
}

} // namespace roundlay::machining
