#include "kernel/solid/boundary.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Finds the edge between two vertices. Vertices have few edges, so a chain per vertex is enough.
class EdgeIndex {
  public:
    EdgeIndex(Boundary &boundary) : boundary_(boundary), first_(boundary.vertices.size(), -1) {}

    EdgeUse use(int from, int to) {
        const int low = std::min(from, to);
        for (int e = first_[static_cast<std::size_t>(low)]; e >= 0; e = next_[static_cast<std::size_t>(e)]) {
            const BoundaryEdge &edge = boundary_.edges[static_cast<std::size_t>(e)];
            if (edge.from == from && edge.to == to) return {e, true};
            if (edge.from == to && edge.to == from) return {e, false};
        }
        const int made = static_cast<int>(boundary_.edges.size());
        boundary_.edges.push_back({from, to, -1});
        next_.push_back(first_[static_cast<std::size_t>(low)]);
        first_[static_cast<std::size_t>(low)] = made;
        return {made, true};
    }

  private:
    Boundary &boundary_;
    std::vector<int> first_, next_;
};

double distance_to_segment(Vec2 p, Vec2 a, Vec2 b) {
    const Vec2 along = b - a;
    const double reach = dot(along, along);
    const double t = reach > 0 ? std::clamp(dot(p - a, along) / reach, 0.0, 1.0) : 0.0;
    return length(p - (a + t * along));
}

/// How a level face and a point over or under it lie to each other, in plan.
struct PlanPlace {
    bool inside = false;
    double to_border = 0;
};

PlanPlace place_in_plan(const Polyhedron &hewn, const Face &face, Vec2 p) {
    PlanPlace place{false, HUGE_VAL};
    for (const std::vector<int> &loop : face.loops) {
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec3 &from = hewn.vertices[static_cast<std::size_t>(loop[i])];
            const Vec3 &to = hewn.vertices[static_cast<std::size_t>(loop[(i + 1) % loop.size()])];
            const Vec2 a{from.x, from.y}, b{to.x, to.y};
            place.to_border = std::min(place.to_border, distance_to_segment(p, a, b));
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
                place.inside = !place.inside;
        }
    }
    return place;
}

enum class Meeting { none, whole_circle, unclear };

/// Which level face, looking up (+1) or down (-1), the bore's end opens in.
Meeting find_opening(const Polyhedron &hewn, const Bore &bore, double z, int looking, int &found) {
    found = -1;
    for (std::size_t i = 0; i < hewn.faces.size(); ++i) {
        const Plane &plane = hewn.faces[i].plane;
        // A sloped face near the bore's end is not for this room: the circle would be an ellipse.
        if (looking * plane.normal.z <= 0) continue;
        if (std::abs(plane.height_at(bore.x, bore.y) - z) > tolerance::weld) continue;
        const PlanPlace place = place_in_plan(hewn, hewn.faces[i], {bore.x, bore.y});
        const double radius = bore.diameter / 2;
        if (!place.inside && place.to_border > radius + tolerance::weld) continue;
        const double tilt = std::hypot(plane.normal.x, plane.normal.y);
        const bool level = tilt * radius < tolerance::weld;
        if (!level || !place.inside || place.to_border <= radius + tolerance::weld) return Meeting::unclear;
        found = static_cast<int>(i);
        return Meeting::whole_circle;
    }
    return Meeting::none;
}

/// Adds the bore's circles, seam, wall and any flat bottom.
void add_bore(Boundary &b, const Bore &bore, int face_below, int face_above) {
    const int index = static_cast<int>(b.bores.size());
    const double radius = bore.diameter / 2;
    b.bores.push_back(
        {{bore.x, bore.y, bore.z_from}, radius, bore.z_to - bore.z_from, face_below >= 0, face_above >= 0});
    const int low = static_cast<int>(b.vertices.size());
    b.vertices.push_back({bore.x + radius, bore.y, bore.z_from});
    b.vertices.push_back({bore.x + radius, bore.y, bore.z_to});
    const int lower = static_cast<int>(b.edges.size()), upper = lower + 1, seam = lower + 2;
    b.edges.push_back({low, low, index});
    b.edges.push_back({low + 1, low + 1, index});
    b.edges.push_back({low, low + 1, -1});
    b.faces.push_back({Plane{}, index, {{{upper, true}, {seam, false}, {lower, false}, {seam, true}}}});

    if (face_below >= 0)
        b.faces[static_cast<std::size_t>(face_below)].loops.push_back({{lower, true}});
    else
        b.faces.push_back({Plane{{0, 0, 1}, bore.z_from}, -1, {{{lower, true}}}});
    if (face_above >= 0)
        b.faces[static_cast<std::size_t>(face_above)].loops.push_back({{upper, false}});
    else
        b.faces.push_back({Plane{{0, 0, -1}, -bore.z_to}, -1, {{{upper, false}}}});
}

} // namespace

Boundary boundary_of(const Polyhedron &hewn) {
    Boundary b;
    b.vertices = hewn.vertices;
    b.edges.reserve(hewn.vertices.size() * 2);
    b.faces.reserve(hewn.faces.size() * 2);
    EdgeIndex index(b);
    for (const Face &face : hewn.faces) {
        BoundaryFace made{face.plane, -1, {}};
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
    if (!body.bores.empty() && !body.bores_clear) return std::nullopt;
    Boundary b = boundary_of(body.hewn);
    for (const Bore &bore : body.bores) {
        int below = -1, above = -1;
        if (find_opening(body.hewn, bore, bore.z_from, -1, below) == Meeting::unclear) return std::nullopt;
        if (find_opening(body.hewn, bore, bore.z_to, +1, above) == Meeting::unclear) return std::nullopt;
        if (below < 0 && above < 0) return std::nullopt;
        add_bore(b, bore, below, above);
    }
    return b;
}

} // namespace roundlay
