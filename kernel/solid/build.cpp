#include "kernel/boundary/boundary.h"
#include "kernel/solid/boolean.h"
#include "kernel/solid/direct.h"
#include "kernel/solid/guarded.h"
#include "kernel/solid/held.h"
#include "kernel/solid/round_tools.h"
#include "kernel/solid/solid.h"

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

Solid cut_by_boolean(const Body &body) {
    const Polyhedron &planed = body.rounds.empty() ? body.hewn : body.planed;
    return cut_and_held(written_down(boundary_of(planed)), tools_of(body), body);
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
