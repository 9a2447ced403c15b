#include "modeler/window/views/elevation_zones.h"

#include "exporters/report/wall_marks.h"
#include "modeler/window/views/record_marks.h"

namespace roundlay::window {

std::vector<ZoneArea> zone_areas(const Layout &layout, const PlacedZones &zones, Index<WallPlace> wall) {
    std::vector<ZoneArea> areas;
    for (const PlacedZone &each : zones.zones) {
        const Piece &piece = layout.pieces[each.piece];
        if (piece.wall != wall || piece.timber) continue;
        for (const sheets::SeenPart &part : sheets::parts_seen(each.zone, sheets::WallSide::outside)) {
            auto outline = sheets::face_outline(layout, piece, each.along, part.band);
            if (!outline.empty())
                areas.push_back(
                    {each.piece, std::move(outline), condition_mark(each.zone.what), part.behind});
        }
    }
    return areas;
}

} // namespace roundlay::window
