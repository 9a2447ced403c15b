#include "kernel/solid/build_all.h"

#include "kernel/threads/for_each_index.h"

#include <stdexcept>

namespace roundlay {

std::vector<BuiltSolid> build_all(const std::vector<Body> &bodies, int threads) {
    std::vector<BuiltSolid> solids(bodies.size());
    for_each_index(bodies.size(), threads, [&](std::size_t i) { solids[i] = build(bodies[i]); });
    return solids;
}

std::vector<BuiltSolid> build_all(const Layout &layout, int threads) {
    std::vector<BuiltSolid> solids(layout.models.size());
    for_each_index(solids.size(), threads, [&](std::size_t i) {
        const Piece &first = layout.pieces[static_cast<std::size_t>(layout.models[i].pieces.front())];
        try {
            solids[i] = build(body_of(first));
        } catch (const std::runtime_error &failure) {
            throw std::runtime_error("Piece " + first.tag + ": " + failure.what());
        }
    });
    return solids;
}

} // namespace roundlay
