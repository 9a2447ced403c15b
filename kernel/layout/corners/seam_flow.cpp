#include "kernel/layout/corners/seam_flow.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Every descent line crosses a convex seam once, so an edge is told by the stretch it covers across the
/// flow.
struct Stretch {
    double from = 0, to = 0;
};

Stretch across_flow(const SeamEdge &edge, Vec2 down) {
    const double s = cross(down, edge.a), t = cross(down, edge.b);
    return {std::min(s, t), std::max(s, t)};
}

/// Positive where the flow leaves by the edge, negative where it enters.
double outflow(const SeamEdge &edge, Vec2 down) {
    const Vec2 d = edge.b - edge.a;
    return dot(down, Vec2{d.y, -d.x});
}

} // namespace

FlowResult flow_on(const std::vector<SeamEdge> &seam, Vec2 gradient) {
    const double steep = length(gradient);
    if (steep < tolerance::weld) return {Flow::level, -1};
    const Vec2 down = (-1 / steep) * gradient;
    for (const SeamEdge &in : seam) {
        if (!in.outdoors || outflow(in, down) >= 0) continue;
        const Stretch enters = across_flow(in, down);
        for (std::size_t i = 0; i < seam.size(); ++i) {
            if (seam[i].outdoors || outflow(seam[i], down) <= 0) continue;
            const Stretch leaves = across_flow(seam[i], down);
            if (std::min(enters.to, leaves.to) - std::max(enters.from, leaves.from) > tolerance::weld)
                return {Flow::leads_in, i};
        }
    }
    return {Flow::sheds, -1};
}

} // namespace roundlay
