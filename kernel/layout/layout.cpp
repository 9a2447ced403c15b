#include "kernel/layout/layout.h"

namespace roundlay {

const char *name_of(TimberUse use) {
    switch (use) {
    case TimberUse::trimmed:
        return "trimmed joist";
    case TimberUse::trimmer:
        return "trimmer";
    case TimberUse::beam:
        return "beam";
    case TimberUse::joist:
        break;
    }
    return "joist";
}

const char *side_word(const Piece &piece, bool inside) {
    if (piece.timber) return inside ? "left" : "right";
    return inside ? "inside" : "outside";
}

std::optional<Index<WallPlace>> wall_named(const Plan &plan, const std::string &name) {
    for (const auto i : plan.walls.indices())
        if (plan.walls[i].name == name) return i;
    return std::nullopt;
}

Indices<LayoutPart> parts_of(const Layout &layout) {
    return Indices<LayoutPart>(layout.walls.size() + layout.floors.size());
}

Index<LayoutPart> part_of(const Layout &layout, const Piece &piece) {
    if (!piece.timber) return Index<LayoutPart>(piece.wall.at());
    return Index<LayoutPart>(layout.walls.size() + layout.timbers[*piece.timber].floor.at());
}

namespace {

/// The floor that a part is, or nothing where it is a wall.
const FloorPlace *floor_of(const Layout &layout, Index<LayoutPart> part) {
    const std::size_t walls = layout.walls.size();
    return part.at() < walls ? nullptr : &layout.floors[Index<FloorPlace>(part.at() - walls)];
}

const WallPlace &wall_of(const Layout &layout, Index<LayoutPart> part) {
    return layout.walls[Index<WallPlace>(part.at())];
}

} // namespace

const std::string &part_letter(const Layout &layout, Index<LayoutPart> part) {
    const FloorPlace *floor = floor_of(layout, part);
    return floor ? floor->name : wall_of(layout, part).name;
}

std::string part_name(const Layout &layout, Index<LayoutPart> part) {
    return (floor_of(layout, part) ? "floor " : "wall ") + part_letter(layout, part);
}

const Frame &part_frame(const Layout &layout, Index<LayoutPart> part) {
    const FloorPlace *floor = floor_of(layout, part);
    return floor ? floor->frame : wall_of(layout, part).frame;
}

} // namespace roundlay
