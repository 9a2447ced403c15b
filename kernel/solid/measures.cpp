#include "kernel/solid/measures.h"

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

} // namespace

Measures measures_of(const Boundary &b) {
    Measures m;
    Vec3 moment;
    for (const BoundaryFace &face : b.faces) {
        if (face.is_bore_wall()) continue;
        for (const std::vector<EdgeUse> &loop : face.loops) {
            const BoundaryEdge &edge = b.edges[static_cast<std::size_t>(loop[0].edge)];
            if (edge.is_circle()) continue;
            const Sums sums = sums_of(b, loop);
            m.area += dot(sums.twice_area, face.plane.normal) / 2;
            m.volume += sums.six_volumes / 6;
            moment = moment + (1.0 / 24) * sums.moments;
        }
    }
    for (const BoundaryBore &bore : b.bores) {
        const double circle = std::numbers::pi * bore.radius * bore.radius;
        const double wood = circle * bore.height;
        m.volume -= wood;
        moment = moment - wood * (bore.foot + Vec3{0, 0, bore.height / 2});
        m.area += 2 * std::numbers::pi * bore.radius * bore.height;
        m.area += (bore.open_below ? -circle : circle) + (bore.open_above ? -circle : circle);
    }
    m.centroid = (1 / m.volume) * moment;
    return m;
}

} // namespace roundlay
