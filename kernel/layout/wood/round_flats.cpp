#include "kernel/layout/wood/round_flats.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double half_turn = std::numbers::pi / round_flats; ///< of one flat
constexpr Vec3 up{0, 0, 1};

/// Across the axis and level, and square to both.
struct Around {
    Vec3 across, over;
    explicit Around(Vec3 along) : across(unit(cross(up, along))), over(cross(along, across)) {}
    Vec3 at(double angle) const { return std::cos(angle) * across + std::sin(angle) * over; }
};

/// The area between an arc and its flat, from the flat's middle to `s` along it. Measured in rays from the
/// axis: integral of (r^2 - c^2 - s^2) / 2 over the angle, c the flat's distance from the axis.
double area_to(double s, double c, double r) {
    return (r * r * std::atan(s / c) - c * s) / 2;
}

/// Gauss with five points: of a function as smooth as an arc over one flat, exact to rounding.
template <typename F> double mean(F f, double a, double b) {
    constexpr std::array<double, 3> at{0, 0.5384693101056831, 0.9061798459386640};
    constexpr std::array<double, 3> weight{0.5688888888888889, 0.4786286704993665, 0.2369268850561891};
    const double m = (a + b) / 2, h = (b - a) / 2;
    double sum = weight[0] * f(m);
    for (std::size_t i = 1; i < at.size(); ++i)
        sum += weight[i] * (f(m - h * at[i]) + f(m + h * at[i]));
    return sum / 2;
}

Vec3 centre_of(const Polyhedron &solid, const Face &face) {
    double area = 0;
    Vec3 moment;
    for (const auto &loop : face.loops)
        for (std::size_t i = 1; i + 1 < loop.size(); ++i) {
            const auto p = [&](std::size_t k) { return solid.vertices[static_cast<std::size_t>(loop[k])]; };
            const double part = dot(cross(p(i) - p(0), p(i + 1) - p(0)), face.plane.normal);
            area += part;
            moment = moment + (part / 3) * (p(0) + p(i) + p(i + 1));
        }
    return area == 0 ? solid.vertices[static_cast<std::size_t>(face.loops[0][0])] : (1 / area) * moment;
}

} // namespace

RoundSurface surface_of(const RoundCut &cut) {
    return {cut.from, unit(cut.to - cut.from), cut.radius, false};
}

RoundSurface surface_of(const ScopeCut &cut) {
    return {cut.at, cut.along, cut.radius, true};
}

Vec3 normal_on(const RoundSurface &surface, Vec3 point) {
    Vec3 out = point - surface.at;
    out = out - dot(out, surface.along) * surface.along;
    if (!surface.hollow) return unit(out);
    return -unit({out.x, out.y, std::max(out.z, 0.0)});
}

std::vector<Plane> flats_of(const RoundCut &cut, int number) {
    const RoundSurface s = surface_of(cut);
    const Around around(s.along);
    std::vector<Plane> flats;
    for (int k = 0; k < round_flats; ++k) {
        const Vec3 n = around.at((2 * k + 1) * half_turn);
        flats.push_back({n, dot(n, s.at) + s.radius * std::cos(half_turn), number});
    }
    return flats;
}

std::vector<Plane> region_of(const ScopeCut &cut, double length, int number) {
    const Around around(cut.along);
    std::vector<Plane> region;
    if (cut.use == ScopeUse::groove && cut.x_from > tolerance::thinnest)
        region.push_back({{-1, 0, 0}, -cut.x_from});
    if (cut.use == ScopeUse::groove && cut.x_to < length - tolerance::thinnest)
        region.push_back({{1, 0, 0}, cut.x_to});
    const auto add = [&](Vec3 n) { region.push_back({n, dot(n, cut.at) + cut.radius, number}); };
    // The two upright sides first: all that they leave outside stays in one cell.
    const double half = cut.half_width();
    for (const Vec3 &n : {around.across, -around.across})
        region.push_back({n, dot(n, cut.at) + half, half < cut.radius ? 0 : number});
    for (int k = 1; k < round_flats / 2; ++k)
        add(around.at(2 * k * half_turn));
    return region;
}

Sagitta sagitta_of(const Polyhedron &solid, const Face &face, const RoundSurface &surface) {
    const Vec3 n = face.plane.normal, t = cross(surface.along, n);
    const double c = std::abs(face.plane.distance(surface.at)), r = surface.radius;
    const double reach = c * std::tan(half_turn);
    // The upright sides of a scope are round above its axis only.
    const double rising = surface.hollow && std::abs(n.z) < tolerance::weld ? (t.z > 0 ? 1 : -1) : 0;
    const double least = rising > 0 ? 0 : -reach, most = rising < 0 ? 0 : reach;
    const auto to = [&](double s) { return area_to(std::clamp(s, least, most), c, r); };
    Sagitta result;
    for (const auto &loop : face.loops)
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec3 a = solid.vertices[static_cast<std::size_t>(loop[i])] - surface.at;
            const Vec3 b = solid.vertices[static_cast<std::size_t>(loop[(i + 1) % loop.size()])] - surface.at;
            result.volume += (dot(b, surface.along) - dot(a, surface.along)) * mean(to, dot(a, t), dot(b, t));
        }
    if (surface.hollow) result.volume = -result.volume;
    result.centre = centre_of(solid, face);
    return result;
}

double mean_fall(const RoundSurface &surface, const Bore &bore, double z) {
    const Around around(surface.along);
    const double r = surface.radius, aside = dot(Vec3{bore.x, bore.y, z} - surface.at, around.across);
    const auto height = [&](double s) { return std::sqrt(std::max(0.0, r * r - s * s)); };
    const double top =
        dot(surface.at, up) + height(aside); // of level logs; others have flats where they are bored
    if (std::abs(top - z) > tolerance::weld) return 0;
    // Gauss-Chebyshev of the second kind: the chords of the bore's circle are its weight.
    constexpr int points = 12;
    double sum = 0;
    for (int i = 1; i <= points; ++i) {
        const double a = std::numbers::pi * i / (points + 1), sine = std::sin(a);
        sum += 2.0 / (points + 1) * sine * sine *
               (height(aside) - height(aside + bore.diameter / 2 * std::cos(a)));
    }
    return sum;
}

} // namespace roundlay
