// Upright rectangles on paper, millimetres, y upward.
#pragma once

#include "kernel/geometry/vec.h"

#include <algorithm>

namespace roundlay::sheets {

/// Empty while x0 > x1 or y0 > y1.
struct Rect {
    double x0 = 0, y0 = 0, x1 = 0, y1 = 0;

    static constexpr Rect nothing() { return {1, 1, 0, 0}; }
    constexpr bool empty() const { return x0 > x1 || y0 > y1; }
    constexpr double width() const { return x1 - x0; }
    constexpr double height() const { return y1 - y0; }
    constexpr Vec2 centre() const { return {(x0 + x1) / 2, (y0 + y1) / 2}; }
    constexpr Rect moved(Vec2 by) const { return {x0 + by.x, y0 + by.y, x1 + by.x, y1 + by.y}; }
    /// By the same amount on every side; negative shrinks.
    constexpr Rect grown(double by) const { return {x0 - by, y0 - by, x1 + by, y1 + by}; }
    /// Touching borders do not overlap.
    constexpr bool overlaps(const Rect &o) const { return x0 < o.x1 && o.x0 < x1 && y0 < o.y1 && o.y0 < y1; }
    constexpr bool holds(const Rect &o) const { return x0 <= o.x0 && y0 <= o.y0 && o.x1 <= x1 && o.y1 <= y1; }
    bool operator==(const Rect &) const = default;
};

inline Rect joined(const Rect &a, const Rect &b) {
    if (a.empty()) return b;
    if (b.empty()) return a;
    return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

inline Rect joined(const Rect &a, Vec2 p) {
    return joined(a, Rect{p.x, p.y, p.x, p.y});
}

} // namespace roundlay::sheets
