#include "exporters/machining/tilt.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::machining {

namespace {

constexpr double degrees = 180 / std::numbers::pi;
constexpr double not_at_all = 90; ///< degrees
constexpr double free_of = 1e-9;  ///< of unit vectors: so little into a face is none

bool same(Vec3 a, Vec3 b) {
    return length(a - b) < tolerance::weld;
}

/// The way along the edge that two faces share.
std::optional<Vec3> edge_way(const CellFace &a, const CellFace &b) {
    const auto in_b = [&](Vec3 p) { return std::ranges::any_of(b.ring, [&](Vec3 q) { return same(p, q); }); };
    for (std::size_t i = 0; i < a.ring.size(); ++i) {
        const Vec3 from = a.ring[i], to = a.ring[(i + 1) % a.ring.size()];
        if (!same(from, to) && in_b(from) && in_b(to)) return unit(cross(a.plane.normal, b.plane.normal));
    }
    return {};
}

/// The faces that one operation leaves, seen along the way in.
class Faces {
  public:
    Faces(const Operation &operation, const Cell &taken, Vec3 way) : way_(way) {
        for (const CellFace &face : taken.faces)
            if (std::ranges::any_of(operation.sides, [&](const TakenSide &side) {
                    return same(side.plane.normal, face.plane.normal) &&
                           std::abs(side.plane.offset - face.plane.offset) < tolerance::weld;
                }))
                faces_.push_back(&face);
    }

    double least() const {
        double most = 0;
        for (const CellFace *face : faces_)
            most = std::max(most, std::min(of_end(*face), of_flank(*face)));
        return most;
    }

  private:
    /// Degrees of a tool that stands that way, out of the wood; it must come out past every face.
    double off(Vec3 tool) const {
        for (const CellFace *face : faces_)
            if (dot(tool, face->plane.normal) > free_of) return not_at_all;
        return between(tool);
    }

    double between(Vec3 tool) const { return std::acos(std::clamp(dot(tool, way_), -1.0, 1.0)) * degrees; }

    /// Beside a corner of less than a right angle it stands into the other face, and lies on its own up to
    /// that corner: what stays there is the corner's.
    double of_end(const CellFace &face) const {
        const Vec3 tool = -face.plane.normal;
        for (const CellFace *other : faces_) {
            const bool into = dot(tool, other->plane.normal) > free_of;
            if (into && other != &face && !edge_way(face, *other)) return not_at_all;
        }
        return between(tool);
    }

    double off_either_way(Vec3 tool) const { return off(dot(tool, way_) < 0 ? -tool : tool); }

    /// Each edge may be reached by a tilt of its own: what lies between is reached by any of them.
    double of_flank(const CellFace &face) const {
        const Vec3 n = face.plane.normal;
        double most = -1;
        for (const CellFace *other : faces_) {
            if (other == &face) continue;
            const auto edge = edge_way(face, *other);
            if (edge) most = std::max(most, std::min(off_either_way(*edge), off_either_way(cross(n, *edge))));
        }
        if (most >= 0) return most;
        const Vec3 nearest = way_ - dot(way_, n) * n; // no edge: as little as the face itself asks for
        return length(nearest) < free_of ? not_at_all : off(unit(nearest));
    }

    Vec3 way_;
    std::vector<const CellFace *> faces_;
};

} // namespace

double least_tilt(const Operation &operation, const Cell &taken, Vec3 way) {
    return Faces(operation, taken, way).least();
}

} // namespace roundlay::machining
