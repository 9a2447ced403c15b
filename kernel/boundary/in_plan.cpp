#include "kernel/boundary/in_plan.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

double distance_to_segment(Vec2 p, Vec2 a, Vec2 b) {
    const Vec2 along = b - a;
    const double reach = dot(along, along);
    const double t = reach > 0 ? std::clamp(dot(p - a, along) / reach, 0.0, 1.0) : 0.0;
    return length(p - (a + t * along));
}

PlanPlace place_in_plan(const Polyhedron &hewn, const Face &face, Vec2 p) {
    PlanPlace place{false, HUGE_VAL};
    for (const std::vector<int> &loop : face.loops) {
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec3 &from = hewn.vertices[static_cast<std::size_t>(loop[i])];
            const Vec3 &to = hewn.vertices[static_cast<std::size_t>(loop[(i + 1) % loop.size()])];
            const Vec2 a{from.x, from.y}, b{to.x, to.y};
            place.to_border = std::min(place.to_border, distance_to_segment(p, a, b));
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
                place.inside = !place.inside;
        }
    }
    return place;
}

} // namespace roundlay
