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

namespace {

/// Over each support, by the equation of three moments: m[k-1] l[k-1] + 2 m[k] (l[k-1] + l[k]) + m[k+1] l[k]
/// = what the loads of the two spans turn there. Solved from the front, then from the back.
std::vector<double> moments_over(const std::vector<SpanLoad> &spans) {
    const std::size_t n = spans.size();
    std::vector<double> m(n + 1, 0), passed(n + 1, 0);
    for (std::size_t k = 1; k < n; ++k) {
        const double before = spans[k - 1].span, behind = spans[k].span;
        const double own = 2 * (before + behind) - before * passed[k - 1];
        passed[k] = behind / own;
        m[k] = (turn(spans[k - 1], true) + turn(spans[k], false) - before * m[k - 1]) / own;
    }
    for (std::size_t k = n; k-- > 1;)
        m[k] -= passed[k] * m[k + 1];
    return m;
}

} // namespace

std::vector<double> reactions(const std::vector<SpanLoad> &spans) {
    const std::vector<double> m = moments_over(spans);
    std::vector<double> on(m.size(), 0);
    for (std::size_t k = 0; k < spans.size(); ++k) {
        const double handed_on = (m[k + 1] - m[k]) / spans[k].span;
        on[k] += left_reaction(spans[k]) - handed_on;
        on[k + 1] += right_reaction(spans[k]) + handed_on;
    }
    return on;
}

std::vector<double> least_reactions(const std::vector<SpanLoad> &sure, const std::vector<SpanLoad> &may) {
    std::vector<double> least = reactions(sure);
    std::vector<SpanLoad> one = may;
    for (std::size_t k = 0; k < may.size(); ++k) {
        for (std::size_t i = 0; i < one.size(); ++i)
            one[i] = i == k ? may[i] : SpanLoad{may[i].span, 0, {}};
        const std::vector<double> with = reactions(one);
        for (std::size_t i = 0; i < least.size(); ++i)
            least[i] += std::min(0.0, with[i]);
    }
    return least;
}

} // namespace roundlay
