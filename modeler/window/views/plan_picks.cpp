// What lies under a pointer in the plan.
#include "modeler/window/views/plan_places.h"
#include "modeler/window/views/plan_view.h"

namespace roundlay::window {

std::optional<Index<WallPlace>> PlanView::wall_at(Vec2 at) const {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return std::nullopt;
    for (const auto i : layout->walls.indices()) {
        const WallPlace &w = place(*layout, i);
        const Vec3 local = w.frame.to_local({at.x, at.y, 0});
        if (local.x >= 0 && local.x <= w.length && local.y >= -reach() && local.y <= w.thickness + reach())
            return i;
    }
    return std::nullopt;
}

std::optional<Index<CornerPlace>> PlanView::corner_at(Vec2 at) const {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return std::nullopt;
    for (const auto i : layout->corners.indices())
        if (length(layout->corners[i].centre - at) <= reach()) return i;
    return std::nullopt;
}

int PlanView::opening_at(Vec2 at) const {
    const Layout *layout = layout_of(desk_);
    const auto wall = wall_at(at);
    if (layout == nullptr || !wall) return -1;
    const WallPlace &w = place(*layout, *wall);
    const double along = w.frame.to_local({at.x, at.y, 0}).x;
    const auto &openings = shell_of(desk_).openings;
    for (std::size_t i = 0; i < openings.size(); ++i)
        if (openings[i].wall == w.name && along >= openings[i].from_left.mm() &&
            along <= (openings[i].from_left + openings[i].width).mm())
            return static_cast<int>(i);
    return -1;
}

Chosen PlanView::thing_at(Vec2 at) const {
    if (const auto corner = corner_at(at))
        return {Chosen::Kind::corner, layout_of(desk_)->corners[*corner].name, -1};
    if (const int opening = opening_at(at); opening >= 0) return {Chosen::Kind::opening, {}, opening};
    if (const auto wall = wall_at(at)) return {Chosen::Kind::wall, place(*layout_of(desk_), *wall).name, -1};
    if (const auto timber = timber_at(at))
        return {Chosen::Kind::piece, layout_of(desk_)->pieces[*timber].tag, -1};
    return {};
}

Spot PlanView::spot_at(Vec2 at) const {
    if (thing_at(at).kind != Chosen::Kind::wall) return {};
    const WallPlace &w = place(*layout_of(desk_), *wall_at(at));
    return {w.name, w.frame.to_local({at.x, at.y, 0}).x, {}};
}

std::optional<Index<Piece>> PlanView::timber_at(Vec2 at) const {
    const Layout *layout = layout_of(desk_);
    if (layout == nullptr) return std::nullopt;
    for (const Timber &timber : layout->timbers) {
        const Piece &piece = layout->pieces[timber.piece];
        const Vec3 local = piece.frame.to_local({at.x, at.y, piece.frame.origin.z});
        if (local.x >= 0 && local.x <= piece.blank.length && local.y >= 0 && local.y <= piece.blank.width)
            return timber.piece;
    }
    return std::nullopt;
}

} // namespace roundlay::window
