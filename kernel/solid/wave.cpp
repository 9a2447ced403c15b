#include "kernel/solid/wave.h"

#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array1OfPnt2d.hxx>

#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace roundlay {

namespace {

constexpr int degree = 16;
constexpr std::size_t count = degree + 1;
constexpr long double pi = std::numbers::pi_v<long double>;

using Poles = std::array<long double, count>;
using Matrix = std::array<Poles, count>;

/// Gauss with pivoting. Long doubles: the polynomials below are some 1e5 from being dependent.
Poles solved(Matrix m, Poles right) {
    for (std::size_t c = 0; c < count; ++c) {
        std::size_t best = c;
        for (std::size_t r = c + 1; r < count; ++r)
            if (std::abs(m[r][c]) > std::abs(m[best][c])) best = r;
        std::swap(m[c], m[best]);
        std::swap(right[c], right[best]);
        for (std::size_t r = c + 1; r < count; ++r) {
            const long double factor = m[r][c] / m[c][c];
            for (std::size_t k = c; k < count; ++k)
                m[r][k] -= factor * m[c][k];
            right[r] -= factor * right[c];
        }
    }
    for (std::size_t c = count; c-- > 0;) {
        for (std::size_t k = c + 1; k < count; ++k)
            right[c] -= m[c][k] * right[k];
        right[c] /= m[c][c];
    }
    return right;
}

/// All Bernstein polynomials of the degree at s.
Poles bernstein(long double s) {
    Poles values{};
    values[0] = 1;
    for (std::size_t d = 1; d < count; ++d)
        for (std::size_t k = d + 1; k-- > 0;)
            values[k] = (k < d ? (1 - s) * values[k] : 0) + (k > 0 ? s * values[k - 1] : 0);
    return values;
}

/// Poles of the polynomial that meets a whole wave at both ends and at the Chebyshev points between.
Poles poles_of(long double (*wave)(long double)) {
    Matrix m{};
    Poles right{};
    for (std::size_t r = 0; r < count; ++r) {
        const long double spread = std::cos(pi * (2 * static_cast<long double>(r) + 1) / (2 * count));
        const long double s = (1 - spread / std::cos(pi / (2 * count))) / 2;
        m[r] = bernstein(s);
        right[r] = wave(2 * pi * s);
    }
    return solved(m, right);
}

} // namespace

Handle(Geom2d_BSplineCurve) wave_of(const BoreEnd &end, double radius, double foot, double first) {
    static const Poles cosine = poles_of([](long double u) { return std::cos(u); });
    static const Poles sine = poles_of([](long double u) { return std::sin(u); });
    TColgp_Array1OfPnt2d poles(1, degree + 1);
    for (std::size_t i = 0; i < count; ++i) {
        const double u = 2 * std::numbers::pi * static_cast<double>(i) / degree;
        const auto c = static_cast<double>(cosine[i]), s = static_cast<double>(sine[i]);
        poles(static_cast<int>(i) + 1) = {u, end.z - foot + radius * (end.rise.x * c + end.rise.y * s)};
    }
    TColStd_Array1OfReal knots(1, 2);
    knots(1) = first;
    knots(2) = first + 2 * std::numbers::pi;
    TColStd_Array1OfInteger multiplicities(1, 2);
    multiplicities.Init(degree + 1);
    return new Geom2d_BSplineCurve(poles, knots, multiplicities, degree);
}

} // namespace roundlay
