// How much wood a layout holds.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"

namespace roundlay::test {

inline double volume_of(const Layout &layout) {
    const auto bodies = bodies_of(layout);
    double sum = 0;
    for (const Piece &p : layout.pieces)
        sum += bodies[p.model].volume;
    return sum;
}

inline bool clean(const Layout &layout) {
    const auto bodies = bodies_of(layout);
    return overlaps(layout, bodies).empty() && blocked_on_the_way_down(layout, bodies).empty();
}

} // namespace roundlay::test
