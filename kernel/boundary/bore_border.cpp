#include "kernel/boundary/bore_border.h"

#include "kernel/boundary/polynomial.h"

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

/// Adds a rim and the face it is in: around a hole in an open face, else around a flat bottom.
int add_rim(Boundary &b, Index<BoundaryBore> bore, bool upper, const BoreMeeting &meeting) {
    const BoundaryBore &of = b.bores[bore];
    const int vertex = count_of(b.vertices), rim = count_of(b.edges);
    const double z = meeting.rim.poles.empty() ? meeting.end.z + meeting.end.rise.x * of.radius
                                               : meeting.rim.poles.front().z;
    b.vertices.push_back({of.axis.x + of.radius, of.axis.y, z});
    b.edges.push_back({vertex, vertex, bore, upper});
    if (!meeting.rim.poles.empty()) b.edges.back().curve = b.curves.push_back({std::nullopt, meeting.rim});
    if (meeting.face) {
        b.faces[*meeting.face].loops.push_back({{rim, !upper}});
    } else {
        const double up = upper ? -1 : 1; // the bottom's outside is the bore
        b.faces.push_back({Plane{{0, 0, up}, up * meeting.end.z}, {}, {}, {{{rim, !upper}}}});
    }
    return rim;
}

} // namespace

void add_bore(Boundary &b, const Bore &bore, const BoreMeeting &below, const BoreMeeting &above) {
    const auto index = b.bores.push_back({{bore.x, bore.y}, bore.diameter / 2, below.end, above.end});
    const int lower = add_rim(b, index, false, below), upper = add_rim(b, index, true, above);
    const int seam = count_of(b.edges);
    b.edges.push_back(
        {b.edges[static_cast<std::size_t>(lower)].from, b.edges[static_cast<std::size_t>(upper)].from});
    b.faces.push_back({Plane{}, index, {}, {{{upper, true}, {seam, false}, {lower, false}, {seam, true}}}});
}

Polynomials rim_in(const RoundSurface &surface, const Bore &bore, double z) {
    constexpr int degree = 11, quarters = 4, checks = 3 * degree;
    const double radius = bore.diameter / 2;
    const auto at = [&](double t) -> std::optional<Vec3> {
        const double u = 2 * std::numbers::pi * t;
        const Vec3 foot{bore.x + radius * std::cos(u), bore.y + radius * std::sin(u), z};
        const auto rise = along_to(surface, foot, {0, 0, 1}, 0);
        return rise ? std::optional(foot + Vec3{0, 0, *rise}) : std::nullopt;
    };
    Polynomials rim{{}, quarters};
    for (int q = 0; q < quarters; ++q) {
        std::vector<Vec3> points;
        for (const double t : places_of(degree)) {
            const auto p = at((q + t) / quarters);
            if (!p) return {};
            points.push_back(*p);
        }
        const std::vector<Vec3> poles = poles_through(points);
        rim.poles.insert(rim.poles.end(), poles.begin() + (q > 0 ? 1 : 0), poles.end());
    }
    rim.poles.back() = rim.poles.front();
    for (int i = 1; i < quarters * checks; ++i) {
        const double t = i / (1.0 * quarters * checks);
        const auto p = at(t);
        if (!p || length(*p - point_on(rim, t)) > curve_fit) return {};
    }
    return rim;
}

} // namespace roundlay
