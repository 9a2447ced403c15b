#include "kernel/solid/wave.h"

#include "kernel/boundary/polynomial.h"

#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array1OfPnt2d.hxx>

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr int degree = 11, quarters = 4;

/// Poles of a wave's quarters, end to end.
std::vector<double> poles_of(double (*wave)(double)) {
    std::vector<double> poles;
    for (int q = 0; q < quarters; ++q) {
        std::vector<double> values;
        for (const double t : places_of(degree))
            values.push_back(wave(2 * std::numbers::pi * (q + t) / quarters));
        const std::vector<double> quarter = poles_through(values);
        poles.insert(poles.end(), quarter.begin() + (q > 0 ? 1 : 0), quarter.end());
    }
    return poles;
}

} // namespace

Handle(Geom2d_BSplineCurve) wave_of(const BoreEnd &end, double radius, double foot, double first) {
    static const std::vector<double> cosine = poles_of([](double u) { return std::cos(u); });
    static const std::vector<double> sine = poles_of([](double u) { return std::sin(u); });
    constexpr int last = degree * quarters;
    TColgp_Array1OfPnt2d poles(1, last + 1);
    for (int i = 0; i <= last; ++i) {
        const double u = 2 * std::numbers::pi * i / last;
        const double c = cosine[static_cast<std::size_t>(i)], s = sine[static_cast<std::size_t>(i)];
        poles(i + 1) = {u, end.z - foot + radius * (end.rise.x * c + end.rise.y * s)};
    }
    TColStd_Array1OfReal knots(1, quarters + 1);
    TColStd_Array1OfInteger times(1, quarters + 1);
    times.Init(degree);
    times(1) = times(quarters + 1) = degree + 1;
    for (int i = 0; i <= quarters; ++i)
        knots(i + 1) = first + 2 * std::numbers::pi * i / quarters;
    return new Geom2d_BSplineCurve(poles, knots, times, degree);
}

} // namespace roundlay
