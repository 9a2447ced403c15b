#include "exporters/mesh/carve.h"

#include "kernel/geometry/tolerance.h"

#include <cmath>
#include <map>
#include <numbers>
#include <optional>

namespace roundlay {
namespace {

/// The prism as the meet of half-spaces, corners on the bore's circle.
std::vector<Plane> prism_of(const Bore &bore, int sides) {
    std::vector<Plane> planes{{{0, 0, 1}, bore.z_to}, {{0, 0, -1}, -bore.z_from}};
    const double to_side = bore.diameter / 2 * std::cos(std::numbers::pi / sides);
    for (int i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * (i + 0.5) / sides;
        const Vec3 outward{std::cos(angle), std::sin(angle), 0};
        planes.push_back({outward, dot(outward, {bore.x, bore.y, 0}) + to_side});
    }
    return planes;
}

/// The bore that a face is a side of.
std::optional<int> bore_of(const Face &face, const std::vector<Bore> &bores, int sides) {
    constexpr double same_place = 1e-3; // mm: far above what carving rounds, far below what a saw sees
    if (std::abs(face.plane.normal.z) > tolerance::weld) return std::nullopt;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const double to_side = bores[i].diameter / 2 * std::cos(std::numbers::pi / sides);
        const double to_axis = face.plane.distance({bores[i].x, bores[i].y, 0});
        if (std::abs(to_axis - to_side) < same_place) return static_cast<int>(i);
    }
    return std::nullopt;
}

} // namespace

Body carved(const Body &body, int sides) {
    Body out;
    out.rounds = body.rounds;
    out.cells = body.cells;
    for (const Bore &bore : body.bores)
        out.cells = without(std::move(out.cells), prism_of(bore, sides));
    out.hewn = border_of(out.cells);
    return out;
}

std::vector<std::array<int, 2>> edges_round_bores(const Polyhedron &hewn, const std::vector<Bore> &bores,
                                                  int sides) {
    std::map<std::pair<int, int>, std::optional<int>>
        side_of; // by directed edge: a bore, or past them a round surface, or neither
    for (const Face &face : hewn.faces) {
        const auto smooth =
            face.plane.round > 0 ? count_of(bores) + face.plane.round : bore_of(face, bores, sides);
        for (const auto &loop : face.loops)
            for (std::size_t i = 0; i < loop.size(); ++i)
                side_of[{loop[i], loop[(i + 1) % loop.size()]}] = smooth;
    }
    std::vector<std::array<int, 2>> edges;
    for (const auto &[edge, bore] : side_of) {
        const auto [a, b] = edge;
        if (a > b) continue;
        const auto other = side_of.find({b, a});
        if (!bore || other == side_of.end() || other->second != bore) edges.push_back({a, b});
    }
    return edges;
}

} // namespace roundlay
