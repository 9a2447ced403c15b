#include "exporters/sheets/plan/outlines.h"

#include "kernel/layout/plan/wall_side.h"

namespace roundlay::sheets {

std::vector<Vec2> partition_corners(const WallPlace &wall) {
    std::vector<Vec2> ring;
    for (const Vec2 p :
         {Vec2{0, 0}, Vec2{wall.length, 0}, Vec2{wall.length, wall.thickness}, Vec2{0, wall.thickness}}) {
        const Vec3 world = wall.frame.to_world({p.x, p.y, 0});
        ring.push_back({world.x, world.y});
    }
    return ring;
}

std::vector<std::vector<Vec2>> run_ons(const Layout &layout) {
    constexpr double more_than_a_tail = 500; // mm: our choice, no source
    std::vector<std::vector<Vec2>> all;
    for (const Piece &piece : layout.pieces) {
        if (piece.timber || piece.round != 1 || piece.wall.at() >= outer_walls(layout)) continue;
        const WallPlace &wall = layout.walls[piece.wall];
        const auto ring = [&](double from, double to) {
            if (to - from <= more_than_a_tail) return;
            all.emplace_back();
            for (const Vec2 p :
                 {Vec2{from, 0}, Vec2{to, 0}, Vec2{to, wall.thickness}, Vec2{from, wall.thickness}}) {
                const Vec3 world = wall.frame.to_world({p.x, p.y, 0});
                all.back().push_back({world.x, world.y});
            }
        };
        const double begin = wall.frame.to_local(piece.frame.origin).x;
        ring(begin, 0);
        ring(wall.length, begin + piece.blank.length);
    }
    return all;
}

} // namespace roundlay::sheets
