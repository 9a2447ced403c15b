#include "kernel/boundary/polynomial.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <utility>

namespace roundlay {

namespace {

using Row = std::vector<long double>;
using Matrix = std::vector<Row>;

std::size_t size(int i) {
    return static_cast<std::size_t>(i);
}

/// All Bernstein polynomials of the degree at s.
Row bernstein(int degree, long double s) {
    Row values(size(degree) + 1);
    values[0] = 1;
    for (int d = 1; d <= degree; ++d)
        for (int k = d; k >= 0; --k)
            values[size(k)] = (k < d ? (1 - s) * values[size(k)] : 0) + (k > 0 ? s * values[size(k) - 1] : 0);
    return values;
}

/// The Chebyshev points, stretched so that both ends are among them.
std::vector<long double> spread(int degree) {
    const int count = degree + 1;
    const long double pi = std::numbers::pi_v<long double>;
    std::vector<long double> places;
    for (int r = 0; r < count; ++r) {
        const long double at = std::cos(pi * (2 * r + 1) / (2 * count));
        places.push_back((1 - at / std::cos(pi / (2 * count))) / 2);
    }
    places.front() = 0;
    places.back() = 1;
    return places;
}

/// Gauss-Jordan with pivoting. Long doubles: of high degrees the polynomials are some 1e5 from being
/// dependent.
Matrix inverse(Matrix m) {
    const std::size_t n = m.size();
    Matrix result(n, Row(n));
    for (std::size_t i = 0; i < n; ++i)
        result[i][i] = 1;
    for (std::size_t c = 0; c < n; ++c) {
        std::size_t best = c;
        for (std::size_t r = c + 1; r < n; ++r)
            if (std::abs(m[r][c]) > std::abs(m[best][c])) best = r;
        std::swap(m[c], m[best]);
        std::swap(result[c], result[best]);
        const long double pivot = m[c][c];
        for (std::size_t k = 0; k < n; ++k) {
            m[c][k] /= pivot;
            result[c][k] /= pivot;
        }
        for (std::size_t r = 0; r < n; ++r) {
            if (r == c) continue;
            const long double factor = m[r][c];
            for (std::size_t k = 0; k < n; ++k) {
                m[r][k] -= factor * m[c][k];
                result[r][k] -= factor * result[c][k];
            }
        }
    }
    return result;
}

struct Degree {
    std::vector<double> places;
    Matrix to_poles;
};

const Degree &of_degree(int degree) {
    static const auto all = [] {
        std::array<Degree, highest_degree + 1> degrees;
        for (int d = 1; d <= highest_degree; ++d) {
            Matrix values;
            for (const long double s : spread(d)) {
                values.push_back(bernstein(d, s));
                degrees[size(d)].places.push_back(static_cast<double>(s));
            }
            degrees[size(d)].to_poles = inverse(values);
        }
        return degrees;
    }();
    return all.at(size(degree));
}

} // namespace

const std::vector<double> &places_of(int degree) {
    return of_degree(degree).places;
}

std::vector<double> poles_through(const std::vector<double> &values) {
    const Matrix &m = of_degree(static_cast<int>(values.size()) - 1).to_poles;
    std::vector<double> poles;
    for (const Row &row : m) {
        long double sum = 0;
        for (std::size_t k = 0; k < row.size(); ++k)
            sum += row[k] * values[k];
        poles.push_back(static_cast<double>(sum));
    }
    return poles;
}

std::vector<Vec3> poles_through(const std::vector<Vec3> &values) {
    std::vector<Vec3> poles(values.size());
    for (double Vec3::*axis : {&Vec3::x, &Vec3::y, &Vec3::z}) {
        std::vector<double> along;
        along.reserve(values.size());
        for (const Vec3 &v : values)
            along.push_back(v.*axis);
        const std::vector<double> made = poles_through(along);
        for (std::size_t i = 0; i < made.size(); ++i)
            poles[i].*axis = made[i];
    }
    return poles;
}

namespace {

Vec3 point_on(std::vector<Vec3> p, double t) {
    for (std::size_t n = p.size(); n > 1; --n)
        for (std::size_t i = 0; i + 1 < n; ++i)
            p[i] = (1 - t) * p[i] + t * p[i + 1];
    return p[0];
}

/// The poles of the part that t lies in, and where in it.
struct Part {
    std::vector<Vec3> poles;
    double t = 0;
};

Part part_at(const Polynomials &curve, double t) {
    const int part = std::clamp(static_cast<int>(t * curve.parts), 0, curve.parts - 1);
    const auto from = curve.poles.begin() + std::ptrdiff_t(part) * curve.degree();
    return {{from, from + curve.degree() + 1}, t * curve.parts - part};
}

} // namespace

Vec3 point_on(const Polynomials &curve, double t) {
    const Part part = part_at(curve, t);
    return point_on(part.poles, part.t);
}

Vec3 derivative_on(const Polynomials &curve, double t) {
    const Part part = part_at(curve, t);
    std::vector<Vec3> steps;
    for (std::size_t i = 0; i + 1 < part.poles.size(); ++i)
        steps.push_back(curve.degree() * curve.parts * (part.poles[i + 1] - part.poles[i]));
    return point_on(steps, part.t);
}

} // namespace roundlay
