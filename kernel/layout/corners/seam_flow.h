// Where water goes on a seam: down the steepest way, from the edge it comes in by to the edge it leaves by.
#pragma once

#include "kernel/geometry/vec.h"

#include <optional>
#include <vector>

namespace roundlay {

struct SeamEdge {
    Vec2 a, b;            ///< counter-clockwise round the seam seen from above
    bool outdoors = true; ///< weather reaches this edge
};

enum class Flow {
    sheds,   ///< all that enters from outdoors leaves outdoors
    level,   ///< neither sheds nor leads in
    leads_in ///< some of it reaches an indoor edge
};

struct FlowResult {
    Flow flow = Flow::level;
    std::optional<std::size_t> edge =
        std::nullopt; ///< for leads_in: the indoor edge, an index into the polygon
};

/// seam: convex polygon seen from above. gradient: slope of the seam plane in the same axes.
FlowResult flow_on(const std::vector<SeamEdge> &seam, Vec2 gradient);

} // namespace roundlay
