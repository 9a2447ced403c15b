#include "kernel/solid/bored_wood.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace roundlay {

namespace {

struct Stretch {
    double from = 0, to = 0;
};
using Stretches = std::vector<Stretch>; ///< of an upright line, apart from one another

Vec2 seen_from_above(const Polyhedron &wood, int vertex) {
    const Vec3 p = wood.vertices[static_cast<std::size_t>(vertex)];
    return {p.x, p.y};
}

bool is_under(const Polyhedron &wood, const Face &face, Vec2 at) {
    bool within = false;
    for (const std::vector<int> &loop : face.loops)
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec2 a = seen_from_above(wood, loop[i]),
                       b = seen_from_above(wood, loop[(i + 1) % loop.size()]);
            if ((a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x))
                within = !within;
        }
    return within;
}

/// The wood that an upright line runs through.
Stretches wood_along(const Polyhedron &wood, Vec2 at) {
    constexpr double upright = 1e-9;
    std::vector<double> heights;
    for (const Face &face : wood.faces)
        if (std::abs(face.plane.normal.z) > upright && is_under(wood, face, at))
            heights.push_back(face.plane.height_at(at.x, at.y));
    std::ranges::sort(heights);
    Stretches all;
    for (std::size_t i = 0; i + 1 < heights.size(); i += 2)
        all.push_back({heights[i], heights[i + 1]});
    return all;
}

Stretches without(const Stretches &all, const Stretch &part) {
    Stretches left;
    for (const Stretch &s : all) {
        if (s.from < part.from) left.push_back({s.from, std::min(s.to, part.from)});
        if (s.to > part.to) left.push_back({std::max(s.from, part.to), s.to});
    }
    return left;
}

double shared(const Stretches &some, const Stretches &others) {
    double sum = 0;
    for (const Stretch &a : some)
        for (const Stretch &b : others)
            sum += std::max(0.0, std::min(a.to, b.to) - std::max(a.from, b.from));
    return sum;
}

double area_of(const Bore &bore) {
    return std::numbers::pi / 4 * bore.diameter * bore.diameter;
}

bool holds(const Bore &bore, Vec2 at) {
    return std::hypot(at.x - bore.x, at.y - bore.y) < bore.diameter / 2;
}

/// Of one bore, less what those before it take.
double taken_by(const Body &body, std::size_t which) {
    constexpr int lines = 48; // across
    const Bore &bore = body.bores[which];
    const double step = bore.diameter / lines;
    double sum = 0;
    int count = 0;
    for (int i = 0; i < lines; ++i)
        for (int k = 0; k < lines; ++k) {
            const Vec2 at{bore.x + (i + 0.5) * step - bore.diameter / 2,
                          bore.y + (k + 0.5) * step - bore.diameter / 2};
            if (!holds(bore, at)) continue;
            ++count;
            Stretches own{{bore.z_from, bore.z_to}};
            for (std::size_t before = 0; before < which; ++before)
                if (holds(body.bores[before], at))
                    own = without(own, {body.bores[before].z_from, body.bores[before].z_to});
            sum += shared(own, wood_along(body.hewn, at));
        }
    return count > 0 ? sum / count * area_of(bore) : 0;
}

} // namespace

double wood_within_bores(const Body &body) {
    double all = 0;
    for (std::size_t i = 0; i < body.bores.size(); ++i)
        all += taken_by(body, i);
    return all;
}

double bores_taken_whole(const Body &body) {
    double all = 0;
    for (const Bore &b : body.bores)
        all += area_of(b) * (b.z_to - b.z_from);
    return all;
}

} // namespace roundlay
