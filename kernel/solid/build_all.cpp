#include "kernel/solid/build_all.h"

#include "kernel/threads/for_each_index.h"

#include <stdexcept>

namespace roundlay {

BuiltSolids build_all(const Bodies &bodies, int threads) {
    BuiltSolids solids(bodies.size());
    for_each_index(bodies.size(), threads, [&](std::size_t i) {
        const Index<Model> model(i);
        solids[model] = build(bodies[model]);
    });
    return solids;
}

BuiltSolids build_all(const Layout &layout, int threads) {
    BuiltSolids solids(layout.models.size());
    for_each_index(solids.size(), threads, [&](std::size_t i) {
        const Index<Model> model(i);
        const Piece &first = layout.pieces[layout.models[model].pieces.front()];
        try {
            solids[model] = build(body_of(first));
        } catch (const std::runtime_error &failure) {
            throw std::runtime_error("Piece " + first.tag + ": " + failure.what());
        }
    });
    return solids;
}

} // namespace roundlay
