#include "kernel/trade/span_load.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay {

double left_reaction(const SpanLoad &load) {
    double sum = load.per_length * load.span / 2;
    for (const PointLoad &p : load.points)
        sum += p.force * (load.span - p.at) / load.span;
    return sum;
}

double right_reaction(const SpanLoad &load) {
    double sum = load.per_length * load.span / 2;
    for (const PointLoad &p : load.points)
        sum += p.force * p.at / load.span;
    return sum;
}

namespace {

double moment_at(const SpanLoad &load, double x) {
    double sum = left_reaction(load) * x - load.per_length * x * x / 2;
    for (const PointLoad &p : load.points)
        sum -= p.force * std::max(0.0, x - p.at);
    return sum;
}

/// The three-moment equation's term of one span, for the support at its one side.
double turn(const SpanLoad &load, bool support_at_right) {
    const double l = load.span;
    double sum = load.per_length * l * l * l / 4;
    for (const PointLoad &p : load.points) {
        const double a = support_at_right ? p.at : l - p.at;
        sum += p.force * a * (l * l - a * a) / l;
    }
    return sum;
}

} // namespace

double largest_moment(const SpanLoad &load) {
    double most = 0;
    for (const PointLoad &p : load.points)
        most = std::max(most, moment_at(load, p.at));
    if (load.per_length <= 0) return most;
    // Between loads it is largest where the shear is none; a place outside its stretch only gives less.
    double shear = left_reaction(load);
    std::vector<PointLoad> points = load.points;
    std::sort(points.begin(), points.end(),
              [](const PointLoad &a, const PointLoad &b) { return a.at < b.at; });
    for (std::size_t i = 0; i <= points.size(); ++i) {
        most = std::max(most, moment_at(load, std::clamp(shear / load.per_length, 0.0, load.span)));
        if (i < points.size()) shear -= points[i].force;
    }
    return most;
}

double most_deflection(const SpanLoad &load, double elasticity, double inertia) {
    const double l = load.span;
    double sum = 5 * load.per_length * std::pow(l, 4) / 384;
    for (const PointLoad &p : load.points) {
        const double b = std::min(p.at, l - p.at);
        sum += p.force * b * std::pow(std::max(0.0, l * l - b * b), 1.5) / (9 * std::numbers::sqrt3 * l);
    }
    return sum / (elasticity * inertia);
}

double moment_between(const SpanLoad &before, const SpanLoad &behind) {
    return (turn(before, true) + turn(behind, false)) / (2 * (before.span + behind.span));
}

double reaction_between(const SpanLoad &before, const SpanLoad &behind) {
    const double moment = moment_between(before, behind);
    return right_reaction(before) + left_reaction(behind) + moment / before.span + moment / behind.span;
}

double shear_between(const SpanLoad &before, const SpanLoad &behind) {
    const double moment = moment_between(before, behind);
    return std::max(right_reaction(before) + moment / before.span,
                    left_reaction(behind) + moment / behind.span);
}

} // namespace roundlay
