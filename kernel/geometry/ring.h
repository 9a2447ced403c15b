// A closed line of points in a plane, its last one joined to its first.
#pragma once

#include "kernel/geometry/vec.h"

#include <vector>

namespace roundlay {

/// By the even-odd rule; either way round. A point on the ring itself may be told either way.
inline bool is_inside(const std::vector<Vec2> &ring, Vec2 p) {
    bool in = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec2 a = ring[i], b = ring[(i + 1) % ring.size()];
        if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
    }
    return in;
}

} // namespace roundlay
