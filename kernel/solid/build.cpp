#include "kernel/boundary/boundary.h"
#include "kernel/solid/boolean.h"
#include "kernel/solid/direct.h"
#include "kernel/solid/guarded.h"
#include "kernel/solid/round_tools.h"
#include "kernel/solid/solid.h"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace roundlay {

namespace {

Blank room_of(const Polyhedron &wood) {
    const Box3 box = bounds(wood);
    return {box.high.x, box.high.y, box.high.z};
}

/// All that the plane faces leave to be cut.
TopTools_ListOfShape tools_of(const Body &body) {
    TopTools_ListOfShape tools;
    const Blank room = room_of(body.rounds.empty() ? body.hewn : body.planed);
    for (const RoundCut &cut : body.stick)
        tools.Append(stick_tool(cut, cut.radius + room.width + room.height));
    for (const ScopeCut &cut : body.scopes)
        tools.Append(scope_tool(cut, room));
    for (const Bore &bore : body.bores)
        tools.Append(bore_tool(bore));
    return tools;
}

double bored(const Body &body) {
    double all = 0;
    for (const Bore &b : body.bores)
        all += std::numbers::pi / 4 * b.diameter * b.diameter * (b.z_to - b.z_from);
    return all;
}

} // namespace

void hold_against(const Solid &solid, const Body &body) {
    constexpr double within = 1e-3; // Body::volume is good to 3e-4 where a boolean is asked for
    if (!is_valid(solid))
        throw std::runtime_error("What the solid modeller left after the cuts is no valid solid.");
    const double least = (1 - within) * body.volume;
    // Bores that meet are each taken off the volume whole.
    const double most = (1 + within) * body.volume + (body.bores_clear ? 0 : bored(body));
    if (const double left = volume(solid); left < least || left > most)
        throw std::runtime_error("The solid modeller left " + std::to_string(std::llround(left)) +
                                 " mm3 of wood where " + std::to_string(std::llround(body.volume)) +
                                 " mm3 are left by the cuts.");
}

namespace {

Solid cut_by_boolean(const Body &body) {
    const Polyhedron &planed = body.rounds.empty() ? body.hewn : body.planed;
    Solid solid(cut(written_down(boundary_of(planed)), tools_of(body)));
    hold_against(solid, body);
    return solid;
}

} // namespace

BuiltSolid build(const Body &body) {
    if (body.hewn.faces.empty()) throw std::runtime_error("A piece with no wood has no solid.");
    return guarded("building a piece", [&]() -> BuiltSolid {
        if (const std::optional<Boundary> boundary = boundary_of(body))
            return {Solid(written_down(*boundary)), Method::direct};
        return {cut_by_boolean(body), Method::boolean};
    });
}

} // namespace roundlay
