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
    if (piece.timber >= 0) return inside ? "left" : "right";
    return inside ? "inside" : "outside";
}

int wall_named(const Plan &plan, const std::string &name) {
    for (std::size_t i = 0; i < plan.walls.size(); ++i)
        if (plan.walls[i].name == name) return static_cast<int>(i);
    return -1;
}

namespace {

/// The floor that a part is, or nothing where it is a wall.
const FloorPlace *floor_of(const Layout &layout, int part) {
    const int walls = static_cast<int>(layout.walls.size());
    return part < walls ? nullptr : &layout.floors[static_cast<std::size_t>(part - walls)];
}

} // namespace

int part_count(const Layout &layout) {
    return static_cast<int>(layout.walls.size() + layout.floors.size());
}

int part_of(const Layout &layout, const Piece &piece) {
    if (piece.timber < 0) return piece.wall;
    return static_cast<int>(layout.walls.size()) +
           layout.timbers[static_cast<std::size_t>(piece.timber)].floor;
}

const std::string &part_letter(const Layout &layout, int part) {
    const FloorPlace *floor = floor_of(layout, part);
    return floor ? floor->name : layout.walls[static_cast<std::size_t>(part)].name;
}

std::string part_name(const Layout &layout, int part) {
    return (floor_of(layout, part) ? "floor " : "wall ") + part_letter(layout, part);
}

const Frame &part_frame(const Layout &layout, int part) {
    const FloorPlace *floor = floor_of(layout, part);
    return floor ? floor->frame : layout.walls[static_cast<std::size_t>(part)].frame;
}

} // namespace roundlay
