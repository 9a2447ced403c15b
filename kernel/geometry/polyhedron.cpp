#include "kernel/geometry/polyhedron.h"

#include <algorithm>
#include <limits>
#include <map>

namespace roundlay {

namespace {

Vec3 area_vector(const Polyhedron &solid, const std::vector<int> &loop) {
    Vec3 sum;
    const Vec3 o = solid.vertices[static_cast<std::size_t>(loop[0])];
    for (std::size_t i = 1; i + 1 < loop.size(); ++i) {
        const Vec3 a = solid.vertices[static_cast<std::size_t>(loop[i])] - o;
        const Vec3 b = solid.vertices[static_cast<std::size_t>(loop[i + 1])] - o;
        sum = sum + 0.5 * cross(a, b);
    }
    return sum;
}

/// Calls visit(a, b, c) for a signed fan of triangles over every loop: holes count negative by their turn.
template <typename Visit> void each_fan_triangle(const Polyhedron &solid, Visit visit) {
    for (const Face &face : solid.faces)
        for (const auto &loop : face.loops)
            for (std::size_t i = 1; i + 1 < loop.size(); ++i)
                visit(solid.vertices[static_cast<std::size_t>(loop[0])],
                      solid.vertices[static_cast<std::size_t>(loop[i])],
                      solid.vertices[static_cast<std::size_t>(loop[i + 1])]);
}

} // namespace

double volume(const Polyhedron &solid) {
    if (solid.vertices.empty()) return 0;
    const Vec3 o = solid.vertices[0]; // near the wood, so that no large numbers cancel
    double six = 0;
    each_fan_triangle(solid, [&](Vec3 a, Vec3 b, Vec3 c) { six += dot(a - o, cross(b - o, c - o)); });
    return six / 6;
}

Vec3 centroid(const Polyhedron &solid) {
    if (solid.vertices.empty()) return {};
    const Vec3 o = solid.vertices[0];
    double six = 0;
    Vec3 moment;
    each_fan_triangle(solid, [&](Vec3 a, Vec3 b, Vec3 c) {
        const Vec3 u = a - o, v = b - o, w = c - o;
        const double part = dot(u, cross(v, w));
        six += part;
        moment = moment + (part / 4) * (u + v + w);
    });
    return six == 0 ? o : o + (1 / six) * moment;
}

double area(const Polyhedron &solid, const Face &face) {
    double sum = 0;
    for (const auto &loop : face.loops)
        sum += dot(area_vector(solid, loop), face.plane.normal);
    return sum;
}

Box3 bounds(const Polyhedron &solid) {
    constexpr double big = std::numeric_limits<double>::max();
    Box3 box{{big, big, big}, {-big, -big, -big}};
    for (const Vec3 &v : solid.vertices) {
        box.low = {std::min(box.low.x, v.x), std::min(box.low.y, v.y), std::min(box.low.z, v.z)};
        box.high = {std::max(box.high.x, v.x), std::max(box.high.y, v.y), std::max(box.high.z, v.z)};
    }
    return box;
}

bool is_closed(const Polyhedron &solid) {
    std::map<std::pair<int, int>, int> used;
    for (const Face &face : solid.faces)
        for (const auto &loop : face.loops)
            for (std::size_t i = 0; i < loop.size(); ++i)
                if (++used[{loop[i], loop[(i + 1) % loop.size()]}] > 1) return false;
    return std::all_of(used.begin(), used.end(), [&](const auto &edge) {
        return used.count({edge.first.second, edge.first.first}) == 1;
    });
}

} // namespace roundlay
