#include "kernel/solid/held.h"

#include "kernel/solid/boolean.h"
#include "kernel/solid/bored_wood.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace roundlay {

namespace {

/// What the cuts leave, mm3, and how well that is known.
struct Expected {
    double volume = 0, within = 0;
};

double longest_extent(const Polyhedron &wood) {
    Vec3 low = wood.vertices.front(), high = low;
    for (const Vec3 &p : wood.vertices) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
    }
    const Vec3 size = high - low;
    return std::max({size.x, size.y, size.z});
}

/// What flats miss lies where round surfaces end, all along them, however little wood of a log a piece has: a
/// patch let into one is held as if it were the log, as long as it is itself, or a lump as large as the log
/// is round.
double at_least_round(const Body &body) {
    if (body.hewn.vertices.empty()) return body.volume;
    const double length = longest_extent(body.hewn);
    double log = body.volume;
    for (const RoundSurface &surface : body.rounds)
        log = std::max(log, surface.radius * surface.radius * std::max(surface.radius, length));
    return log;
}

Expected expected_of(const Body &body) {
    constexpr double exactly = 1e-6;  // of plane faces and clear bores only the library's integration errs
    constexpr double of_round = 5e-4; // Body::volume of round surfaces is good to 3e-4
    constexpr double of_bores = 0.02; // wood_within_bores, and bores that end in a round surface
    Expected left{body.volume, body.rounds.empty() ? exactly * body.volume : of_round * at_least_round(body)};
    if (body.bores.empty() || (body.bores_clear && !body.rounds.empty())) return left;
    const double whole = bores_taken_whole(body), within = wood_within_bores(body);
    if (body.bores_clear && whole - within < of_bores * whole) return left;
    left.volume += whole - within;
    left.within += of_bores * whole;
    return left;
}

} // namespace

void hold_against(const Solid &solid, const Body &body) {
    if (!is_valid(solid))
        throw std::runtime_error("What the solid modeller left after the cuts is no valid solid.");
    const Expected expected = expected_of(body);
    if (const double left = volume(solid); std::abs(left - expected.volume) > expected.within)
        throw std::runtime_error("The solid modeller left " + std::to_string(std::llround(left)) +
                                 " mm3 of wood where " + std::to_string(std::llround(expected.volume)) +
                                 " mm3 are left by the cuts.");
}

Solid cut_and_held(const TopoDS_Shape &wood, const TopTools_ListOfShape &tools, const Body &body) {
    Solid solid(cut(wood, tools));
    hold_against(solid, body);
    return solid;
}

} // namespace roundlay
