#include "kernel/boundary/measures.h"

#include "kernel/boundary/boundary.h"
#include "kernel/boundary/round_measures.h"

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

/// Sums over the triangles of a straight-edged loop, taken as a fan.
struct Sums {
    Vec3 twice_area;
    double six_volumes = 0;
    Vec3 moments; ///< of the tetrahedra to the origin, times 24
};

Sums sums_of(const Boundary &b, const std::vector<EdgeUse> &loop) {
    const auto start = [&](const EdgeUse &use) {
        const BoundaryEdge &edge = b.edges[static_cast<std::size_t>(use.edge)];
        return b.vertices[static_cast<std::size_t>(use.forward ? edge.from : edge.to)];
    };
    Sums sums;
    const Vec3 first = start(loop[0]);
    for (std::size_t i = 1; i + 1 < loop.size(); ++i) {
        const Vec3 second = start(loop[i]), third = start(loop[i + 1]);
        const double six = dot(first, cross(second, third));
        sums.twice_area = sums.twice_area + cross(second - first, third - first);
        sums.six_volumes += six;
        sums.moments = sums.moments + six * (first + second + third);
    }
    return sums;
}

/// What a bore takes out of the wood, and adds to its surface.
struct BoreMeasures {
    double volume = 0, area = 0;
    Vec3 moment;
};

/// A cylinder between two planes. Over its disc the plane's height is z + rise . (x, y), and the integrals of
/// x, y and xy vanish; that of x x and of y y is pi r^4 / 4.
BoreMeasures measures_of_bore(const BoundaryBore &bore) {
    const double r = bore.radius, disc = std::numbers::pi * r * r, second = disc * r * r / 4;
    const BoreEnd &low = bore.below, &high = bore.above;
    BoreMeasures m;
    m.volume = disc * (high.z - low.z);
    m.moment = {m.volume * bore.axis.x + second * (high.rise.x - low.rise.x),
                m.volume * bore.axis.y + second * (high.rise.y - low.rise.y),
                (disc * (high.z * high.z - low.z * low.z) +
                 second * (dot(high.rise, high.rise) - dot(low.rise, low.rise))) /
                    2};
    m.area = 2 * std::numbers::pi * r * (high.z - low.z);
    for (const BoreEnd &end : {low, high})
        m.area += (end.open ? -disc : disc) * std::hypot(1, length(end.rise));
    return m;
}

} // namespace

Measures measures_of(const Boundary &b) {
    if (!b.rounds.empty()) return round_measures_of(b);
    Measures m;
    Vec3 moment;
    for (const BoundaryFace &face : b.faces) {
        if (face.is_bore_wall()) continue;
        for (const std::vector<EdgeUse> &loop : face.loops) {
            const BoundaryEdge &edge = b.edges[static_cast<std::size_t>(loop[0].edge)];
            if (edge.is_rim()) continue;
            const Sums sums = sums_of(b, loop);
            m.area += dot(sums.twice_area, face.plane.normal) / 2;
            m.volume += sums.six_volumes / 6;
            moment = moment + (1.0 / 24) * sums.moments;
        }
    }
    for (const BoundaryBore &bore : b.bores) {
        const BoreMeasures taken = measures_of_bore(bore);
        m.volume -= taken.volume;
        moment = moment - taken.moment;
        m.area += taken.area;
    }
    m.centroid = (1 / m.volume) * moment;
    return m;
}

} // namespace roundlay
