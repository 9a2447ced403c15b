#include "kernel/boundary/boundary.h"

#include "kernel/boundary/bore_border.h"
#include "kernel/boundary/in_plan.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Finds the edge between two vertices. Vertices have few edges, so a chain per vertex is enough.
class EdgeIndex {
  public:
    EdgeIndex(Boundary &boundary) : boundary_(boundary), first_(boundary.vertices.size()) {}

    EdgeUse use(int from, int to) {
        const int low = std::min(from, to);
        std::optional<int> &first = first_[static_cast<std::size_t>(low)];
        for (auto e = first; e; e = next_[static_cast<std::size_t>(*e)]) {
            const BoundaryEdge &edge = boundary_.edges[static_cast<std::size_t>(*e)];
            if (edge.from == from && edge.to == to) return {*e, true};
            if (edge.from == to && edge.to == from) return {*e, false};
        }
        const int made = count_of(boundary_.edges);
        boundary_.edges.push_back({from, to});
        next_.push_back(first);
        first = made;
        return {made, true};
    }

  private:
    Boundary &boundary_;
    std::vector<std::optional<int>> first_, next_; ///< edges, by vertex and by edge
};

/// Planes that rise less than this over a bore are level, so that its rim is a circle: far less than a
/// vertex may be off its plane.
constexpr double level_rise = 1e-9;

/// Looking up (+1) for the bore's upper end, down (-1) for its lower one.
BoreMeeting meet(const Polyhedron &hewn, const Bore &bore, double z, int looking) {
    const double radius = bore.diameter / 2;
    for (std::size_t i = 0; i < hewn.faces.size(); ++i) {
        const Plane &plane = hewn.faces[i].plane;
        if (looking * plane.normal.z <= 0) continue;
        if (std::abs(plane.height_at(bore.x, bore.y) - z) > tolerance::weld) continue;
        const PlanPlace place = place_in_plan(hewn, hewn.faces[i], {bore.x, bore.y});
        if (!place.inside && place.to_border > radius + tolerance::weld) continue;
        const bool clear = place.inside && place.to_border > radius + tolerance::weld;
        Vec2 rise{-plane.normal.x / plane.normal.z, -plane.normal.y / plane.normal.z};
        if (length(rise) * radius < level_rise) rise = {};
        return {{plane.height_at(bore.x, bore.y), rise, true}, Index<BoundaryFace>(i), clear, {}};
    }
    return {{z, {}, false}, {}, true, {}};
}

} // namespace

Boundary boundary_of(const Polyhedron &hewn) {
    Boundary b;
    b.vertices = hewn.vertices;
    b.edges.reserve(hewn.vertices.size() * 2);
    b.faces.reserve(hewn.faces.size() * 2);
    EdgeIndex index(b);
    for (const Face &face : hewn.faces) {
        BoundaryFace made{face.plane, {}, {}, {}};
        for (const std::vector<int> &loop : face.loops) {
            std::vector<EdgeUse> uses;
            uses.reserve(loop.size());
            for (std::size_t i = 0; i < loop.size(); ++i)
                uses.push_back(index.use(loop[i], loop[(i + 1) % loop.size()]));
            made.loops.push_back(std::move(uses));
        }
        b.faces.push_back(std::move(made));
    }
    return b;
}

std::optional<Boundary> boundary_of(const Body &body) {
    if (!body.rounds.empty()) return round_boundary_of(body);
    if (!body.bores.empty() && !body.bores_clear) return std::nullopt;
    Boundary b = boundary_of(body.hewn);
    for (const Bore &bore : body.bores) {
        const BoreMeeting below = meet(body.hewn, bore, bore.z_from, -1);
        const BoreMeeting above = meet(body.hewn, bore, bore.z_to, +1);
        if (!below.clear || !above.clear || (!below.face && !above.face)) return std::nullopt;
        add_bore(b, bore, below, above);
    }
    return b;
}

} // namespace roundlay
