// Where the tool comes into a contour, and where bridges stay. Private to this room.
#pragma once

#include "exporters/router/contour.h"

namespace roundlay {

/// The way round with its lead in the middle of a long straight move and as many of the stated tabs as find
/// room on straight moves, spread out, with wood beside them that stays. Nothing where not even two do.
std::optional<RouterContour> contour_with_tabs(const WayRound &way, const std::vector<Vec2> &outline,
                                               const RouterOptions &complete);

} // namespace roundlay
