#include "kernel/boundary/round_measures.h"

#include "kernel/boundary/polynomial.h"
#include "kernel/boundary/rim.h"

#include <array>
#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double whole_turn = 2 * std::numbers::pi;

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

EdgePoint on_arc(const Arc &arc, double t) {
    const Vec3 over = cross(arc.axis, arc.start);
    const double c = std::cos(arc.turn * t), s = std::sin(arc.turn * t);
    return {arc.centre + arc.radius * (c * arc.start + s * over),
            arc.turn * arc.radius * (c * over - s * arc.start)};
}

EdgePoint on_rim(const Rim &rim, double t) {
    const Vec3 minor = cross(rim.normal, rim.major);
    const double a = rim.start + whole_turn * t, c = std::cos(a), s = std::sin(a);
    return {rim.centre + rim.semi_major * c * rim.major + rim.semi_minor * s * minor,
            whole_turn * (rim.semi_minor * c * minor - rim.semi_major * s * rim.major)};
}

/// Gauss with eight points on each of a few equal parts.
constexpr std::array<double, 4> places{0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
                                       0.9602898564975363};
constexpr std::array<double, 4> weights{0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                        0.1012285362903763};

template <typename F> void each_place(int parts, F visit) {
    const double half = 0.5 / parts;
    for (int p = 0; p < parts; ++p)
        for (std::size_t i = 0; i < places.size(); ++i)
            for (const double side : {-1.0, 1.0})
                visit((2 * p + 1 + side * places[i]) * half, weights[i] * half);
}

/// Integrals over a face: of n . p / 3, of 1, and of n_i p_i^2 / 2 for each axis.
struct Sums {
    double volume = 0, area = 0;
    Vec3 moment;
};

template <typename F> void along_loops(const Boundary &b, const BoundaryFace &face, F visit) {
    for (const auto &loop : face.loops)
        for (const EdgeUse &use : loop) {
            const BoundaryEdge &edge = b.edges[at(use.edge)];
            const double sign = use.forward ? 1 : -1;
            each_place(edge.is_line()  ? 1
                       : edge.is_rim() ? 8
                                       : 4,
                       [&](double t, double weight) {
                           const EdgePoint p = point_of(b, edge, t);
                           visit(p.at, sign * weight * p.by_t);
                       });
        }
}

/// Green in the plane: the integral of f is that of its sum along u, round the border by v.
Sums over_plane(const Boundary &b, const BoundaryFace &face) {
    const Vec3 n = face.plane.normal, o = b.vertices[at(b.edges[at(face.loops[0][0].edge)].from)];
    const Vec3 u = unit(cross(std::abs(n.x) < 0.7 ? Vec3{1, 0, 0} : Vec3{0, 1, 0}, n)), v = cross(n, u);
    Sums sums;
    along_loops(b, face, [&](Vec3 p, Vec3 step) {
        const double pu = dot(p - o, u), pv = dot(p - o, v), dv = dot(step, v);
        sums.area += pu * dv;
        for (double Vec3::*axis : {&Vec3::x, &Vec3::y, &Vec3::z}) {
            const double c = o.*axis + pv * (v.*axis), k = u.*axis; // the integral of (c + k u)^2 by u
            sums.moment.*axis += n.*axis / 2 * (c * c * pu + c * k * pu * pu + k * k * pu * pu * pu / 3) * dv;
        }
    });
    sums.volume = dot(n, o) * sums.area / 3;
    return sums;
}

struct Cylinder {
    Vec3 foot, along;
    double radius = 0;
    bool hollow = false;
};

/// On the unrolled wall, angle u and height v: the integral of f is that of its sum along v, round the border
/// by -u.
Sums over_cylinder(const Boundary &b, const BoundaryFace &face, const Cylinder &c) {
    const double sign = c.hollow ? -1 : 1;
    Sums sums;
    along_loops(b, face, [&](Vec3 p, Vec3 step) {
        const double v = dot(p - c.foot, c.along);
        const Vec3 out = unit(p - c.foot - v * c.along), base = c.foot + c.radius * out;
        const double du = dot(step, cross(c.along, out)) / c.radius;
        // Loops run counter-clockwise seen from the wood's outside: clockwise on the wall where it is hollow.
        const double by = -sign * c.radius * du;
        sums.area += by * v;
        sums.volume += sign * by * v * dot(base, out) / 3;
        for (double Vec3::*axis : {&Vec3::x, &Vec3::y, &Vec3::z}) {
            const double q = base.*axis, k = c.along.*axis;
            sums.moment.*axis +=
                sign * by * (out.*axis) / 2 * (q * q * v + q * k * v * v + k * k * v * v * v / 3);
        }
    });
    return sums;
}

Sums over(const Boundary &b, const BoundaryFace &face) {
    if (face.is_plane()) return over_plane(b, face);
    if (face.is_bore_wall()) {
        const BoundaryBore &bore = b.bores[*face.bore];
        return over_cylinder(b, face,
                             {{bore.axis.x, bore.axis.y, bore.below.z}, {0, 0, 1}, bore.radius, true});
    }
    const RoundSurface &r = b.rounds[*face.round].surface;
    return over_cylinder(b, face, {r.at, r.along, r.radius, r.hollow});
}

} // namespace

EdgePoint point_of(const Boundary &b, const BoundaryEdge &edge, double t) {
    if (edge.curve) {
        const BoundaryCurve &curve = b.curves[*edge.curve];
        if (curve.arc) return on_arc(*curve.arc, t);
        return {point_on(curve.polynomials, t), derivative_on(curve.polynomials, t)};
    }
    if (edge.is_rim()) return on_rim(rim_of(b.bores[*edge.bore], edge.upper), t);
    const Vec3 from = b.vertices[at(edge.from)], run = b.vertices[at(edge.to)] - from;
    return {from + t * run, run};
}

Measures round_measures_of(const Boundary &b) {
    Measures m;
    Vec3 moment;
    for (const BoundaryFace &face : b.faces) {
        const Sums s = over(b, face);
        m.volume += s.volume;
        m.area += s.area;
        moment = moment + s.moment;
    }
    m.centroid = (1 / m.volume) * moment;
    return m;
}

} // namespace roundlay
