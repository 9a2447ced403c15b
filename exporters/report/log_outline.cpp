#include "exporters/report/log_outline.h"

#include "kernel/layout/piece_places.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <algorithm>

namespace roundlay::sheets {

Along both(const Along &a, const Along &b) {
    return {std::max(a.from, b.from), std::min(a.to, b.to)};
}

Along along_of(const Layout &layout, const Piece &piece) {
    const auto [from, to] = along_wall(layout.walls, piece);
    return {from, to};
}

std::vector<Vec2> face_outline(const Layout &layout, const Piece &piece, const Along &limits,
                               const Band &band) {
    const Along whole = along_of(layout, piece), part = both(whole, limits);
    if (part.empty()) return {};
    const HewnFaces faces = hewn_faces(piece);
    const Frame &wall = layout.walls[piece.wall].frame;
    const auto corner = [&](double along, double share) {
        const double x = along - whole.from, low = faces.lowest(x), high = faces.highest(x);
        const Vec3 at = wall.to_local(piece.frame.to_world({x, 0, low + share * (high - low)}));
        return Vec2{along, at.z};
    };
    return {corner(part.from, band.low), corner(part.to, band.low), corner(part.to, band.high),
            corner(part.from, band.high)};
}

} // namespace roundlay::sheets
