#include "kernel/solid/boolean.h"
#include "kernel/solid/boundary.h"
#include "kernel/solid/direct.h"
#include "kernel/solid/guarded.h"
#include "kernel/solid/solid.h"

namespace roundlay {

BuiltSolid build(const Body &body) {
    if (body.hewn.faces.empty()) throw std::runtime_error("A piece with no wood has no solid.");
    return guarded("building a piece", [&]() -> BuiltSolid {
        if (const std::optional<Boundary> boundary = boundary_of(body))
            return {Solid(written_down(*boundary)), Method::direct};
        TopTools_ListOfShape tools;
        for (const Bore &bore : body.bores)
            tools.Append(bore_tool(bore));
        return {Solid(cut(written_down(boundary_of(body.hewn)), tools)), Method::boolean};
    });
}

} // namespace roundlay
