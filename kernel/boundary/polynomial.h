// Curves as polynomials over [0, 1], by their Bernstein poles.
#pragma once

#include "kernel/geometry/vec.h"

#include <vector>

namespace roundlay {

/// Higher ones lose figures where they are worked out from powers of t, as the library does.
inline constexpr int highest_degree = 13;

/// `degree` + 1 places from 0 to 1, closer toward the ends: a polynomial through a smooth curve there keeps
/// close to it between them. degree: 1 to highest_degree.
const std::vector<double> &places_of(int degree);

/// Poles of the polynomial that takes these values at places_of(values.size() - 1). Good to 1e-14 of the
/// largest value.
std::vector<double> poles_through(const std::vector<double> &values);
std::vector<Vec3> poles_through(const std::vector<Vec3> &values);

/// A curve over [0, 1] by polynomials of one degree, each over as long a part of it; the last pole of one is
/// the first of the next.
struct Polynomials {
    std::vector<Vec3> poles; ///< parts * degree + 1
    int parts = 1;
    int degree() const { return static_cast<int>(poles.size() - 1) / parts; }
};

Vec3 point_on(const Polynomials &curve, double t);
/// By t.
Vec3 derivative_on(const Polynomials &curve, double t);

} // namespace roundlay
