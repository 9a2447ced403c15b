// Planes, read as half-spaces: the wood is where normal . p <= offset.
#pragma once

#include "kernel/geometry/vec.h"

namespace roundlay {

struct Plane {
    Vec3 normal{0, 0, 1}; ///< unit; points out of the wood
    double offset = 0;    ///< millimetres
    int round = 0;        ///< facets of a round surface share a number; 0 = the surface is plane itself

    constexpr double distance(Vec3 p) const { return dot(normal, p) - offset; } ///< > 0 outside
    constexpr Plane flipped() const { return {-normal, -offset, round}; }
    /// z of the plane over (x, y). Only where the plane is not vertical.
    constexpr double height_at(double px, double py) const {
        return (offset - normal.x * px - normal.y * py) / normal.z;
    }
};

/// The plane z = z0 + slope_x * x + slope_y * y with its normal upward.
inline Plane plane_over(double z0, double slope_x, double slope_y) {
    const Vec3 n{-slope_x, -slope_y, 1};
    const double k = 1.0 / length(n);
    return {k * n, k * z0};
}

/// The same plane seen from inside a frame.
inline Plane to_local(const Plane &p, const Frame &f) {
    return {f.direction_to_local(p.normal), p.offset - dot(p.normal, f.origin), p.round};
}

inline Plane to_world(const Plane &p, const Frame &f) {
    const Vec3 n = f.direction_to_world(p.normal);
    return {n, p.offset + dot(n, f.origin), p.round};
}

} // namespace roundlay
