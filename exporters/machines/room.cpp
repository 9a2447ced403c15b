#include "exporters/machines/room.h"

#include "exporters/machining/raw_stock.h"
#include "kernel/geometry/cell.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay::machines {

namespace {

using machining::Operation;
using machining::TakenSide;

Cell cell_between(const Operation &operation) {
    Cell cell = box_cell(operation.box);
    for (const TakenSide &side : operation.sides)
        cell = clipped(cell, side.plane);
    return cell;
}

bool is_on(const Plane &plane, const CellFace &face) {
    return std::ranges::all_of(face.ring,
                               [&](Vec3 p) { return std::abs(plane.distance(p)) < tolerance::weld; });
}

/// From the face of one side to the plane of the other; 0 where they meet.
double apart(const Cell &cell, const Plane &one, const Plane &other) {
    double least = INFINITY;
    for (const CellFace &face : cell.faces)
        if (is_on(one, face))
            for (const Vec3 p : face.ring)
                least = std::min(least, -other.distance(p));
    return std::max(0.0, least);
}

/// The least width that way where both of its ends are closed; infinite where one is open.
double closed_width(const Operation &operation, const Cell &cell, Vec3 way) {
    double least = INFINITY;
    for (const TakenSide &a : operation.sides)
        for (const TakenSide &b : operation.sides)
            if (dot(a.plane.normal, way) > 0.5 && dot(b.plane.normal, way) < -0.5)
                least = std::min(least, apart(cell, a.plane, b.plane));
    return least;
}

} // namespace

double narrowest_room(const Operation &operation) {
    const Cell cell = cell_between(operation);
    double least = INFINITY;
    for (const TakenSide &a : operation.sides)
        for (const TakenSide &b : operation.sides) {
            if (dot(a.plane.normal, b.plane.normal) > -0.5) continue;
            const double gap = apart(cell, a.plane, b.plane);
            if (gap > tolerance::weld) least = std::min(least, gap);
        }
    return least;
}

namespace {

/// Of those of its own sides of which that is true: their area, mm2. It is asked with how far each looks that
/// way.
template <typename Counts> double area_of(const Operation &operation, Vec3 way, Counts &&counts) {
    double area = 0;
    for (const CellFace &face : cell_between(operation).faces) {
        const double along = std::abs(dot(face.plane.normal, way));
        const bool its_own = std::ranges::any_of(
            operation.sides, [&](const TakenSide &side) { return is_on(side.plane, face); });
        if (!its_own || !counts(along)) continue;
        Vec3 twice{};
        for (std::size_t i = 1; i + 1 < face.ring.size(); ++i)
            twice = twice + cross(face.ring[i] - face.ring[0], face.ring[i + 1] - face.ring[0]);
        area += length(twice) / 2;
    }
    return area;
}

} // namespace

double sloped_area(const Operation &operation, Vec3 way) {
    constexpr double square = 1e-6;
    return area_of(operation, way, [](double along) { return along > square && along < 1 - square; });
}

double bottom_area(const Operation &operation, Vec3 way) {
    constexpr double across = 0.7;
    return area_of(operation, way, [](double along) { return along > across; });
}

std::optional<Vec3> bar_in(const Operation &operation, LogFace from, double wide, double thick) {
    const Cell cell = cell_between(operation);
    const Vec3 way = machining::outward(from);
    std::optional<Vec3> best;
    double widest = 0;
    for (const Vec3 along : {Vec3{1, 0, 0}, Vec3{0, 1, 0}, Vec3{0, 0, 1}}) {
        if (std::abs(dot(along, way)) > 0.5) continue;
        const Vec3 across = cross(along, way);
        const double room = closed_width(operation, cell, along);
        if (room < wide || closed_width(operation, cell, across) < thick) continue;
        if (best && room <= widest) continue;
        best = along, widest = room;
    }
    return best;
}

const char *words_for(LogFace side) {
    switch (side) {
    case LogFace::top:
        return "top";
    case LogFace::under:
        return "underside";
    case LogFace::outside:
        return "outside";
    case LogFace::inside:
        return "inside";
    case LogFace::datum_end:
        return "datum end";
    case LogFace::far_end:
        break;
    }
    return "far end";
}

} // namespace roundlay::machines
