#include "modeler/window/views/joint_handles.h"

#include "kernel/layout/cuts/asked.h"

namespace roundlay::window {

namespace {

const SeamCut *top_seam(const Piece &piece, const std::string &corner) {
    for (const Cut &cut : piece.cuts)
        if (const SeamCut *seam = top_seam_at(cut, corner)) return seam;
    return nullptr;
}

/// Outward of the corner along one of its two walls.
Vec2 outward(const Layout &layout, const CornerPlace &corner, Index<WallPlace> wall) {
    const Vec3 x = layout.walls[wall].frame.x;
    return (wall == corner.ends ? 1.0 : -1.0) * Vec2{x.x, x.y};
}

} // namespace

std::optional<TailHold> tail_hold(const Layout &layout, const CornerPlace &corner, Index<Piece> index) {
    const Piece &piece = layout.pieces[index];
    if (piece.timber || (piece.wall != corner.ends && piece.wall != corner.starts)) return {};
    const SeamCut *seam = top_seam(piece, corner.name);
    if (seam == nullptr) return {};
    const Index<WallPlace> other = piece.wall == corner.ends ? corner.starts : corner.ends;
    const Vec2 along = outward(layout, corner, piece.wall), across = outward(layout, corner, other);
    TailHold hold;
    hold.piece = index;
    hold.along_arm = layout.walls[other].thickness / 2;
    hold.across_arm = layout.walls[piece.wall].thickness / 2;
    const Plane top = to_world(seam->seam, piece.frame);
    const auto on_top = [&](double a, double b) {
        const Vec2 p = corner.centre + (a * hold.along_arm) * along + (b * hold.across_arm) * across;
        return Vec3{p.x, p.y, top.height_at(p.x, p.y)};
    };
    hold.outline = {on_top(1, 1), on_top(-1, 1), on_top(-1, -1), on_top(1, -1)};
    hold.along = on_top(1, 0);
    hold.across = on_top(0, 1);
    return hold;
}

} // namespace roundlay::window
