#include "exporters/mesh/facets.h"

#include "exporters/mesh/bore_rings.h"
#include "exporters/mesh/carve.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace roundlay {

namespace {

/// By how much a circle is larger than the bore's whose polygon has the area of the bore's circle.
double widening(int sides) {
    const double angle = 2 * std::numbers::pi / sides;
    return std::sqrt(angle / std::sin(angle));
}

Body widened(Body body, int sides) {
    constexpr int fewest = 3, most = 360;
    if (sides < fewest || sides > most) throw std::invalid_argument("facets_of: a bore has 3 to 360 sides");
    for (Bore &bore : body.bores)
        bore.diameter *= widening(sides);
    return body;
}

std::vector<int> add_corners(Polyhedron &to, const BoreRing &ring) {
    std::vector<int> loop;
    for (const Vec3 &corner : ring.corners) {
        loop.push_back(static_cast<int>(to.vertices.size()));
        to.vertices.push_back(corner);
    }
    return loop;
}

/// `loop` runs clockwise for who looks along the bore from outside: a hole of the face that it opens in, or
/// its blind end.
void open_or_close(Polyhedron &wood, const BoreRing &ring, double outward, std::vector<int> loop) {
    if (ring.face) return wood.faces[*ring.face].loops.push_back(std::move(loop));
    wood.faces.push_back({{{0, 0, -outward}, -outward * ring.corners.front().z}, {std::move(loop)}});
}

void add_prism(Polyhedron &wood, const BoreRings &rings) {
    const std::vector<int> low = add_corners(wood, rings.low), high = add_corners(wood, rings.high);
    for (std::size_t i = 0; i < low.size(); ++i) {
        const std::size_t j = (i + 1) % low.size();
        const Vec3 along = rings.low.corners[j] - rings.low.corners[i];
        const Vec3 inward = unit({-along.y, along.x, 0}); // out of the wood, to the axis
        wood.faces.push_back(
            {{inward, dot(inward, rings.low.corners[i])}, {{low[j], low[i], high[i], high[j]}}});
    }
    open_or_close(wood, rings.high, +1, std::vector<int>(high.rbegin(), high.rend()));
    open_or_close(wood, rings.low, -1, low);
}

} // namespace

Polyhedron facets_of(const Body &body, int sides) {
    const Body wide = widened(body, sides);
    if (!wide.bores_clear) return carved(wide, sides).hewn;
    Polyhedron wood = wide.hewn;
    for (const Bore &bore : wide.bores)
        add_prism(wood, rings_of(wide.hewn, bore, sides));
    return wood;
}

Mesh triangles_of(const Body &body, int sides) {
    return mesh_of(widened(body, sides), {.sides = sides});
}

double facets_off(const Body &body, int sides) {
    double off = 0;
    const double wide = widening(sides), flat = wide * std::cos(std::numbers::pi / sides);
    for (const Bore &bore : body.bores)
        off = std::max({off, bore.diameter / 2 * (wide - 1), bore.diameter / 2 * (1 - flat)});
    const double half = std::cos(std::numbers::pi / round_flats);
    for (const RoundSurface &surface : body.rounds) // flats lie within wood, and round what is scoped out
        off = std::max(off, surface.radius * (surface.hollow ? 1 / half - 1 : 1 - half));
    return off;
}

} // namespace roundlay
