// The way of the tool's middle round a shape. Private to this room.
#pragma once

#include "exporters/router/router.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace roundlay {

/// Straight moves and arcs round the outline, clockwise, each as far off it as the tool is thick to its
/// middle.
struct WayRound {
    Vec2 start;                    ///< where the last move ends
    std::vector<RouterMove> moves; ///< two or more
    std::vector<InnerCorner> corners;
};

/// Nothing where the tool does not get everywhere: only inner corners may keep its radius.
std::optional<WayRound> way_round(const std::vector<Vec2> &outline, double tool);

/// The thickest tool, to a tenth of a millimetre and thinner than `tool`, that gets everywhere; nothing where
/// none of 1 mm or more does.
std::optional<double> thickest_tool(const std::vector<Vec2> &outline, double tool);

/// It has an inside, and no line of it crosses another.
bool is_simple(const std::vector<Vec2> &outline);

double distance_to(const std::vector<Vec2> &ring, Vec2 point); ///< to its border

} // namespace roundlay
