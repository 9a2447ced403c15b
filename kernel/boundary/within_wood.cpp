#include "kernel/boundary/within_wood.h"

#include "kernel/boundary/round_measures.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Beyond a surface by less than this is on it.
constexpr double on_surface = 1e-4;

/// Along the edge from 0 to 1: where it lies in one cell.
struct Stretch {
    double from = 0, to = 1;
};

Stretch within(const Cell &cell, Vec3 from, Vec3 to) {
    Stretch s;
    for (const CellFace &face : cell.faces) {
        const double a = face.plane.distance(from) - on_surface, b = face.plane.distance(to) - on_surface;
        if (a > 0 && b > 0) return {1, 0};
        if (a > 0) s.from = std::max(s.from, a / (a - b));
        if (b > 0) s.to = std::min(s.to, a / (a - b));
    }
    return s;
}

/// Some cell or other holds every place of a straight stretch.
bool covered(const std::vector<Cell> &cells, Vec3 from, Vec3 to) {
    std::vector<Stretch> all;
    for (const Cell &cell : cells)
        if (const Stretch s = within(cell, from, to); s.from <= s.to) all.push_back(s);
    std::sort(all.begin(), all.end(), [](const Stretch &a, const Stretch &b) { return a.from < b.from; });
    const double step = on_surface / std::max(length(to - from), on_surface);
    double reached = 0;
    for (const Stretch &s : all)
        if (s.from <= reached + step) reached = std::max(reached, s.to);
    return reached >= 1 - step;
}

bool inside_round(const Body &body, Vec3 p) {
    for (const RoundCut &cut : body.stick)
        if (distance(surface_of(cut), p) > on_surface) return false;
    for (const ScopeCut &cut : body.scopes) {
        if (cut.use == ScopeUse::groove && (p.x < cut.x_from || p.x > cut.x_to)) continue;
        const RoundSurface s = surface_of(cut);
        const Vec3 off = p - s.at;
        const double across = dot(off, AxisCross(s.along).across);
        if (std::abs(across) > cut.half_width() - on_surface) continue;
        const bool under = off.z < 0 && std::abs(across) < s.radius - on_surface;
        if (under || distance(s, p) < -on_surface) return false;
    }
    return true;
}

/// A curved edge is followed in chords so short that they lie as good as on it.
int chords_of(const Boundary &b, const BoundaryEdge &edge) {
    if (edge.is_line()) return 8;
    const BoundaryCurve &curve = b.curves[*edge.curve];
    return curve.arc ? 4 + static_cast<int>(60 * curve.arc->turn) : 16;
}

bool lies_within(const Boundary &b, const BoundaryEdge &edge, const Body &body) {
    const int chords = chords_of(b, edge);
    Vec3 from = point_of(b, edge, 0).at;
    if (!inside_round(body, from)) return false;
    for (int i = 1; i <= chords; ++i) {
        const Vec3 to = point_of(b, edge, static_cast<double>(i) / chords).at;
        if (!inside_round(body, to) || !covered(body.planed_cells, from, to)) return false;
        from = to;
    }
    return true;
}

} // namespace

bool lies_within_wood(const Boundary &boundary, const Body &body) {
    return std::all_of(boundary.edges.begin(), boundary.edges.end(), [&](const BoundaryEdge &edge) {
        return edge.is_rim() || lies_within(boundary, edge, body);
    });
}

} // namespace roundlay
