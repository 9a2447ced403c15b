// What a timber's loads do between its supports: statics, in newtons and millimetres.
//
// Where a timber runs over a support, two neighbouring spans are taken by themselves, simply held at their
// far ends. That gives more on the support between them than more spans would: 1.25 w L for two equal ones.
// (Textbook statics, equation of three moments; derived.)
#pragma once

#include <vector>

namespace roundlay {

struct PointLoad {
    double at = 0;    ///< from the span's left support, mm
    double force = 0; ///< N
};

struct SpanLoad {
    double span = 0;
    double per_length = 0; ///< over the whole span, N/mm
    std::vector<PointLoad> points;
};

/// As a simple span.
double left_reaction(const SpanLoad &load);
double right_reaction(const SpanLoad &load);
double largest_moment(const SpanLoad &load);

/// Not less than the true one: the largest of each load by itself, added up. 5 w L^4 / (384 E I) and
/// P b (L^2 - b^2)^1.5 / (9 sqrt(3) L E I), b the way to the nearer support.
double most_deflection(const SpanLoad &load, double elasticity, double inertia);

/// Over the support between two spans; positive pulls the top.
double moment_between(const SpanLoad &before, const SpanLoad &behind);
double reaction_between(const SpanLoad &before, const SpanLoad &behind);
/// The larger of those to its two sides.
double shear_between(const SpanLoad &before, const SpanLoad &behind);

/// What lies on each support of a timber that runs on over all of them, one more than spans, simply held at
/// its ends. Below 0 where it pulls up.
std::vector<double> reactions(const std::vector<SpanLoad> &spans);

/// The least on each support where `sure` lies on all spans and `may` on those alone that make it least.
std::vector<double> least_reactions(const std::vector<SpanLoad> &sure, const std::vector<SpanLoad> &may);

} // namespace roundlay
