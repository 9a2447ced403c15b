#include "exporters/mesh/bore_rings.h"

#include "kernel/geometry/tolerance.h"

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

/// Crossings of a level ray to the right, even-odd over all loops.
bool contains(const Polyhedron &hewn, const Face &face, Vec2 p) {
    bool inside = false;
    for (const std::vector<int> &loop : face.loops) {
        for (std::size_t i = 0, j = loop.size() - 1; i < loop.size(); j = i++) {
            const Vec3 a = hewn.vertices[loop[i]], b = hewn.vertices[loop[j]];
            if ((a.y > p.y) == (b.y > p.y)) continue;
            if (p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) inside = !inside;
        }
    }
    return inside;
}

/// Bores open in faces that are level or slant a little with a log's taper, never in upright ones.
bool looks(const Face &face, double up) {
    constexpr double upright = 0.5; // anything between the two kinds
    return face.plane.normal.z * up > upright;
}

std::optional<std::size_t> opens_in(const Polyhedron &hewn, const Bore &bore, double z, double outward) {
    for (std::size_t i = 0; i < hewn.faces.size(); ++i) {
        const Face &face = hewn.faces[i];
        if (!looks(face, outward)) continue;
        if (std::abs(face.plane.height_at(bore.x, bore.y) - z) > tolerance::weld) continue;
        if (contains(hewn, face, {bore.x, bore.y})) return i;
    }
    return std::nullopt;
}

BoreRing ring_of(const Polyhedron &hewn, const Bore &bore, double z, double outward, int sides) {
    BoreRing ring{{}, opens_in(hewn, bore, z, outward)};
    const double radius = bore.diameter / 2;
    for (int i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * i / sides;
        const double x = bore.x + radius * std::cos(angle), y = bore.y + radius * std::sin(angle);
        ring.corners.push_back({x, y, ring.face ? hewn.faces[*ring.face].plane.height_at(x, y) : z});
    }
    return ring;
}

} // namespace

BoreRings rings_of(const Polyhedron &hewn, const Bore &bore, int sides) {
    return {ring_of(hewn, bore, bore.z_from, -1, sides), ring_of(hewn, bore, bore.z_to, +1, sides)};
}

} // namespace roundlay
