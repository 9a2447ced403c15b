// Outlines with holes in them, as paths to be painted.
#pragma once

#include "kernel/geometry/vec.h"

#include <QPainterPath>
#include <vector>

namespace roundlay::window {

/// `at` puts a point where it is painted.
template <typename At> QPainterPath ring_path(const std::vector<std::vector<Vec2>> &rings, At at) {
    QPainterPath path;
    for (const auto &ring : rings) {
        QPolygonF polygon;
        for (const Vec2 &p : ring)
            polygon << at(p);
        path.addPolygon(polygon);
        path.closeSubpath();
    }
    return path;
}

} // namespace roundlay::window
