#include "kernel/layout/floors/footprint.h"

#include <algorithm>
#include <array>

namespace roundlay {

namespace {

/// Two rectangles lie apart if a line along a side of one of them parts them: here, a side of `a`.
bool parted(const Footprint &a, const Footprint &b, double clear) {
    double low_x = 1e300, high_x = -1e300, low_y = 1e300, high_y = -1e300;
    const std::array<Vec2, 4> corners{{{0, 0}, {b.length, 0}, {b.length, b.width}, {0, b.width}}};
    for (const Vec2 c : corners) {
        const Vec3 p = a.frame.to_local(b.frame.to_world({c.x, c.y, 0}));
        low_x = std::min(low_x, p.x), high_x = std::max(high_x, p.x);
        low_y = std::min(low_y, p.y), high_y = std::max(high_y, p.y);
    }
    return high_x < clear || low_x > a.length - clear || high_y < clear || low_y > a.width - clear;
}

} // namespace

bool in_each_others_way(const Footprint &a, const Footprint &b, double clear) {
    if (a.high < b.low + clear || b.high < a.low + clear) return false;
    return !parted(a, b, clear) && !parted(b, a, clear);
}

} // namespace roundlay
