// What holds of the pieces of any shell.
#pragma once

#include "kernel/geometry/polyhedron.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/body.h"

#include <rapidcheck.h>

namespace roundlay::test {

/// Inside a property. Holds every piece to be closed with its bores clear of one another, and gives the wood
/// of all.
inline double sound_volume(const Layout &layout, const Bodies &bodies) {
    double sum = 0;
    for (const Piece &p : layout.pieces) {
        const Body &body = bodies[p.model];
        RC_ASSERT(is_closed(body.hewn));
        RC_ASSERT(body.bores_clear);
        sum += body.volume;
    }
    return sum;
}

} // namespace roundlay::test
