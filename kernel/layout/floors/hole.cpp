#include "kernel/layout/floors/hole.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/rounded.h"

#include <algorithm>
#include <utility>

namespace roundlay {

namespace {

/// Where it leaves the room: by how much, and over which wall or side.
Said out_of_room(const HoleRoom &in, const Hole &h, const Amount &name) {
    const FloorPlace &room = in.room;
    const std::string &from = in.house.walls[room.from].name, &to = in.house.walls[room.to].name;
    const double right = h.right - room.width, away = h.away - room.depth;
    if (right > tolerance::clear && away > tolerance::clear)
        return said(
            "%1 reaches %2 past the right side of the room, which is %3 wide along wall %4, and %5 past "
            "wall %6, which lies %7 from it",
            name, in_mm(right), in_mm(room.width), from, in_mm(away), to, in_mm(room.depth));
    if (right > tolerance::clear)
        return said("%1 reaches %2 past the right side of the room, which is %3 wide along wall %4", name,
                    in_mm(right), in_mm(room.width), from);
    return said("%1 reaches %2 past wall %3, which lies %4 from wall %5", name, in_mm(away), to,
                in_mm(room.depth), from);
}

bool at_side(double room) {
    return room < tolerance::clear;
}

/// Room for what is laid beside it, or none at all.
bool is_trimmed(const FloorPlace &room, const Hole &h) {
    return (h.joist_left || at_side(h.left)) && (h.joist_right || at_side(room.width - h.right)) &&
           (h.trims_near || at_side(h.near)) && (h.trims_away || at_side(room.depth - h.away));
}

} // namespace

std::optional<Hole> hole_of(const HoleRoom &in, const FloorOpening &o, const std::vector<Hole> &others,
                            const RefuseHole &refuse) {
    const FloorPlace &room = in.room;
    Hole h{o.from_left.mm(), (o.from_left + o.width).mm(), o.from_wall.mm(), (o.from_wall + o.length).mm()};
    const Amount name = o.name.empty() ? Amount(said("a floor opening")) : Amount(o.name);
    const auto refused = [&refuse](Said what, std::optional<Said> advice = {}) -> std::optional<Hole> {
        refuse(std::move(what), std::move(advice));
        return {};
    };
    if (h.right > room.width + tolerance::clear || h.away > room.depth + tolerance::clear)
        return refused(out_of_room(in, h, name));
    h.joist_left = h.left >= in.joist;
    h.joist_right = room.width - h.right >= in.joist;
    h.trims_near = h.near >= in.trimmer;
    h.trims_away = room.depth - h.away >= in.trimmer;
    const double beside = std::min(in.joist, h.left), behind = std::min(in.joist, room.width - h.right);
    if (!in.bays.around(h.left - beside, h.right + behind))
        return refused(said("%1 meets a wall that stands in the room", name),
                       said("keep %1 away from it", no_less(in.shell, in.joist)));
    if (!is_trimmed(room, h))
        return refused(said("%1 leaves no room for a joist or trimmer beside it", name),
                       said("let it reach the wall, or keep %1 away from it", no_less(in.shell, in.joist)));
    for (const Hole &other : others)
        if (h.left - 2 * in.joist < other.right && other.left < h.right + 2 * in.joist &&
            h.near < other.away && other.near < h.away)
            return refused(said("%1 comes too near another opening of this floor", name));
    return h;
}

bool crosses(const std::vector<Hole> &holes, double y, double reach) {
    return std::ranges::any_of(holes,
                               [&](const Hole &h) { return y + reach > h.near && y - reach < h.away; });
}

std::optional<Said> clear_of(const Shell &shell, const std::vector<Hole> &holes, double y, double reach,
                             const FloorBays::Bay &within) {
    std::optional<double> near, away;
    for (const Hole &h : holes)
        for (const double at : {rounded_down(shell, h.near - reach), rounded_up(shell, h.away + reach)}) {
            if (at < within.first || at > within.second || crosses(holes, at, reach)) continue;
            if (at < y) near = std::max(near.value_or(at), at);
            if (at > y) away = std::min(away.value_or(at), at);
        }
    if (near && away)
        return said("at %1 or at %2 it passes beside", exactly_in_mm(*near), exactly_in_mm(*away));
    if (near || away) return said("at %1 it passes beside", exactly_in_mm(near ? *near : *away));
    return {};
}

} // namespace roundlay
