// Zones of found wood on the elevation of a wall, as its outside shows them.
#pragma once

#include "modeler/window/views/placed_zones.h"

namespace roundlay::window {

struct ZoneArea {
    Index<Piece> piece;
    std::vector<Vec2>
        outline; ///< x and height as in ElevationScene; beyond the log's own outline nothing is meant
    std::size_t mark = 0; ///< of record_marks(Colouring::condition)
    bool behind = false;  ///< it is on the inside alone
};

/// What is worse lies over what is not.
std::vector<ZoneArea> zone_areas(const Layout &layout, const PlacedZones &zones, Index<WallPlace> wall);

} // namespace roundlay::window
