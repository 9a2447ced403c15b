#include "kernel/boundary/surfaces.h"

#include "kernel/boundary/polynomial.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

/// Directions are the same, or square, to rounding.
constexpr double square_enough = 1e-9;

/// Sine of the least angle between a cylinder and the lines that are followed to it.
constexpr double least_sine = 0.02;

Vec3 off_axis(const RoundSurface &r, Vec3 p) {
    const Vec3 v = p - r.at;
    return v - dot(v, r.along) * r.along;
}

double determinant(Vec3 a, Vec3 b, Vec3 c) {
    return dot(a, cross(b, c));
}

/// The three of them whose gradients are furthest from lying in one plane.
std::array<std::size_t, 3> best_three(std::span<const Surface> all, Vec3 at) {
    std::array<std::size_t, 3> best{0, 1, 2};
    double most = -1;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j)
            for (std::size_t k = j + 1; k < all.size(); ++k) {
                const double d =
                    std::abs(determinant(gradient(all[i], at), gradient(all[j], at), gradient(all[k], at)));
                if (d > most) best = {i, j, k}, most = d;
            }
    return best;
}

/// A curve on a cylinder, by the angle about its axis: from each point of the circle straight along to the
/// other surface.
class Follower {
  public:
    Follower(const RoundSurface &on, const Surface &to, std::span<const Vec3> way)
        : on_(on), to_(to), cross_(on.along) {
        double angle = angle_about(on, way[0]);
        for (const Vec3 &p : way) {
            angle += std::remainder(angle_about(on, p) - angle, 2 * std::numbers::pi);
            marks_.push_back({angle, dot(p - on.at, on.along)});
        }
    }

    double from() const { return marks_.front().angle; }
    double to() const { return marks_.back().angle; }

    std::optional<Vec3> at(double angle) const {
        const Vec3 foot =
            on_.at + on_.radius * (std::cos(angle) * cross_.across + std::sin(angle) * cross_.over);
        const auto s = along_to(to_, foot, on_.along, guess(angle));
        if (!s) return std::nullopt;
        return foot + *s * on_.along;
    }

  private:
    struct Mark {
        double angle = 0, along = 0;
    };

    double guess(double angle) const {
        const double way = to() < from() ? -1 : 1;
        std::size_t i = 1;
        while (i + 1 < marks_.size() && way * marks_[i].angle < way * angle)
            ++i;
        const Mark &a = marks_[i - 1], &b = marks_[i];
        const double t =
            a.angle == b.angle ? 0.5 : std::clamp((angle - a.angle) / (b.angle - a.angle), 0.0, 1.0);
        return a.along + t * (b.along - a.along);
    }

    const RoundSurface &on_;
    const Surface &to_;
    AxisCross cross_;
    std::vector<Mark> marks_;
};

/// Poles of a polynomial of one of a few degrees that keeps to the curve.
std::vector<Vec3> fitted(const Follower &curve, double from, double to) {
    for (const int degree : {3, 6, 9, 13}) {
        std::vector<Vec3> points;
        for (const double t : places_of(degree)) {
            const auto p = curve.at(from + t * (to - from));
            if (!p) return {};
            points.push_back(*p);
        }
        std::vector<Vec3> poles = poles_through(points);
        const auto keeps = [&](double t) {
            const auto p = curve.at(from + t * (to - from));
            return p && length(*p - point_on(Polynomials{poles}, t)) < curve_fit;
        };
        bool good = true;
        for (int i = 1; good && i < 2 * degree + 3; ++i)
            good = keeps(i / (2.0 * degree + 3));
        if (good) return poles;
    }
    return {};
}

/// Near where two surfaces come to touch, a curve turns sharply: there it takes shorter polynomials.
constexpr int most_halvings = 6;

using Curves = std::vector<CurveBetween>;

/// As one polynomial, or as two halves of the way, and so on.
bool fit(const Follower &curve, double from, double to, int halvings, Curves &made) {
    const std::vector<Vec3> poles = fitted(curve, from, to);
    if (!poles.empty()) {
        made.push_back({std::nullopt, poles, poles.front(), poles.back()});
        return true;
    }
    const double middle = (from + to) / 2;
    return halvings > 0 && fit(curve, from, middle, halvings - 1, made) &&
           fit(curve, middle, to, halvings - 1, made);
}

/// How squarely the other surface cuts the lines along a cylinder, at the worst place of the way.
double sine_along(const RoundSurface &on, const Surface &other, std::span<const Vec3> way) {
    double least = 1;
    for (const Vec3 &p : way)
        least = std::min(least, std::abs(dot(gradient(other, p), on.along)));
    return least;
}

/// The ends of the curve are its corners, to the last bit.
std::optional<Curves> followed(const RoundSurface &on, const Surface &to, std::span<const Vec3> way) {
    const Follower curve(on, to, way);
    Curves made;
    if (!fit(curve, curve.from(), curve.to(), most_halvings, made)) return std::nullopt;
    for (const auto &[found, corner] :
         {std::pair(made.front().from, way.front()), std::pair(made.back().to, way.back())})
        if (length(found - corner) > 10 * tolerance::weld) return std::nullopt;
    made.front().from = made.front().poles.front() = way.front();
    made.back().to = made.back().poles.back() = way.back();
    return made;
}

std::optional<Curves> arc_about(const RoundSurface &round, const Surface &plane, std::span<const Vec3> way) {
    const Follower curve(round, plane, way);
    const double turn = curve.to() - curve.from(), sign = turn < 0 ? -1 : 1;
    const Vec3 out = off_axis(round, way.front());
    if (std::abs(turn) < 1e-9) return std::nullopt;
    return Curves{{Arc{way.front() - out, sign * round.along, unit(out), round.radius, std::abs(turn)},
                   {},
                   way.front(),
                   way.back()}};
}

std::optional<Curves> line_along(Vec3 along, std::span<const Vec3> way) {
    const Vec3 run = way.back() - way.front();
    if (length(run) < tolerance::thinnest || length(cross(unit(run), along)) > 1e-6) return std::nullopt;
    return Curves{{std::nullopt, {}, way.front(), way.back()}};
}

std::optional<Curves> round_and_plane(const RoundSurface &round, const Plane &plane,
                                      std::span<const Vec3> way) {
    const double along = std::abs(dot(plane.normal, round.along));
    if (along < square_enough) return line_along(round.along, way);
    if (length(cross(plane.normal, round.along)) < square_enough) return arc_about(round, plane, way);
    return followed(round, plane, way);
}

std::optional<Curves> two_rounds(const RoundSurface &a, const RoundSurface &b, std::span<const Vec3> way) {
    if (length(cross(a.along, b.along)) < square_enough) return line_along(a.along, way);
    const double on_a = sine_along(a, b, way), on_b = sine_along(b, a, way);
    if (std::max(on_a, on_b) < least_sine) return std::nullopt;
    return on_a > on_b ? followed(a, b, way) : followed(b, a, way);
}

} // namespace

double distance(const Surface &surface, Vec3 p) {
    if (const Plane *plane = std::get_if<Plane>(&surface)) return plane->distance(p);
    const auto &r = std::get<RoundSurface>(surface);
    return length(off_axis(r, p)) - r.radius;
}

Vec3 gradient(const Surface &surface, Vec3 p) {
    if (const Plane *plane = std::get_if<Plane>(&surface)) return plane->normal;
    return unit(off_axis(std::get<RoundSurface>(surface), p));
}

AxisCross::AxisCross(Vec3 along) : across(unit(cross({0, 0, 1}, along))), over(cross(along, across)) {}

double angle_about(const RoundSurface &round, Vec3 p) {
    const AxisCross c(round.along);
    return std::atan2(dot(p - round.at, c.over), dot(p - round.at, c.across));
}

std::optional<double> along_to(const Surface &surface, Vec3 p, Vec3 along, double guess) {
    if (const Plane *plane = std::get_if<Plane>(&surface))
        return -plane->distance(p) / dot(plane->normal, along);
    const auto &r = std::get<RoundSurface>(surface);
    const Vec3 w = off_axis(r, p), d = along - dot(along, r.along) * r.along;
    const double a = dot(d, d), b = dot(w, d), c = dot(w, w) - r.radius * r.radius, disc = b * b - a * c;
    if (disc < 0) return std::nullopt;
    const double root = std::sqrt(disc);
    const double one = (-b - root) / a, two = (-b + root) / a;
    return std::abs(one - guess) < std::abs(two - guess) ? one : two;
}

std::optional<Vec3> corner_of(std::span<const Surface> surfaces, Vec3 from, double reach) {
    if (surfaces.size() < 3) return std::nullopt;
    const auto [i, j, k] = best_three(surfaces, from);
    Vec3 p = from;
    for (int step = 0; step < 50; ++step) {
        const Vec3 a = gradient(surfaces[i], p), b = gradient(surfaces[j], p), c = gradient(surfaces[k], p);
        const double d = determinant(a, b, c);
        if (std::abs(d) < square_enough) return std::nullopt;
        const double da = distance(surfaces[i], p), db = distance(surfaces[j], p),
                     dc = distance(surfaces[k], p);
        const Vec3 move = (1 / d) * (da * cross(b, c) + db * cross(c, a) + dc * cross(a, b));
        p = p - move;
        if (length(p - from) > reach) return std::nullopt;
        if (length(move) < 1e-11) break;
    }
    for (const Surface &s : surfaces)
        if (std::abs(distance(s, p)) > tolerance::weld / 10) return std::nullopt;
    return p;
}

std::optional<Curves> curve_between(const Surface &a, const Surface &b, std::span<const Vec3> way) {
    const Plane *pa = std::get_if<Plane>(&a), *pb = std::get_if<Plane>(&b);
    if (pa && pb) return Curves{{std::nullopt, {}, way.front(), way.back()}};
    if (pa) return round_and_plane(std::get<RoundSurface>(b), *pa, way);
    if (pb) return round_and_plane(std::get<RoundSurface>(a), *pb, way);
    return two_rounds(std::get<RoundSurface>(a), std::get<RoundSurface>(b), way);
}

} // namespace roundlay
