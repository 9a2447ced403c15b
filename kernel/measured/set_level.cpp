#include "kernel/layout/floors/room.h"
#include "kernel/measured/rebuild.h"
#include "kernel/measured/settled.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Puts what was stated over the foundation as it was found over the level one.
class Carrying {
  public:
    explicit Carrying(Rebuild &at) : at_(at), was_(at.level->carried) {}

    void all() {
        for (Opening &opening : at_.made.shell.openings)
            if (lies_as_it_did(opening)) carry(opening);
        for (OwnLog &log : at_.made.shell.own_logs)
            if (log.round == 1 && !log.piece && (log.gap_left || log.gap_right)) carry(log);
        for (Floor &floor : at_.made.shell.floors)
            if (lies_as_it_did(floor)) carry(floor);
    }

  private:
    /// How high its sill lies is not stated otherwise: of one without a name, nothing is.
    bool lies_as_it_did(const Opening &opening) const {
        return std::ranges::any_of(was_.openings, [&](const Opening &was) {
            if (opening.name.empty()) return was == opening;
            return was.name == opening.name && was.wall == opening.wall && was.sill == opening.sill;
        });
    }
    bool lies_as_it_did(const Floor &floor) const {
        return std::ranges::any_of(was_.floors, [&](const Floor &was) {
            return was.name == floor.name && was.level == floor.level;
        });
    }

    void carry(Opening &opening) const {
        const auto wall = wall_named(at_.plan, opening.wall);
        if (!wall) return;
        const double by = at_.sunk(*wall, (opening.from_left + opening.width / 2).mm()),
                     low = opening.sill.mm() - by, high = low + opening.height.mm();
        opening.sill = Length::mm(std::max(low, 0.0)); // a door's sill may lie on the foundation
        opening.height = Length::mm(high) - opening.sill;
    }

    /// A log that is packed up otherwise now is packed so on the new foundation.
    void carry(OwnLog &log) const {
        const auto wall = wall_named(at_.plan, log.wall);
        const auto same = std::ranges::find_if(was_.own_logs, [&](const OwnLog &each) {
            return each.wall == log.wall && each.round == 1 && !each.piece;
        });
        if (!wall || same == was_.own_logs.end()) return;
        const Course &course = at_.course(*wall, 1);
        const auto lowered = [&](std::optional<Length> &gap, const std::optional<Length> &was, double x) {
            if (gap && gap == was) gap = Length::mm(std::max(gap->mm() - at_.sunk(*wall, x), 0.0));
        };
        lowered(log.gap_left, same->gap_left, course.x_datum);
        lowered(log.gap_right, same->gap_right, course.x_far);
    }

    /// How far the foundation had sunk under its joists' ends, at the four corners of the room.
    std::vector<double> sunk_under(const Floor &floor) const {
        const auto from = wall_named(at_.plan, floor.from), to = wall_named(at_.plan, floor.to);
        const auto room = from && to ? room_between(at_.plan, *from, *to) : std::nullopt;
        std::vector<double> all;
        for (const double along : {0.0, room ? room->width : 0.0})
            for (const double across : {0.0, room ? room->depth : 0.0}) {
                if (!room) return all;
                const auto wall = across == 0 ? *from : *to;
                const Vec3 corner = room->frame.to_world({along, across, 0});
                all.push_back(at_.sunk(wall, at_.plan.walls[wall].frame.to_local(corner).x));
            }
        return all;
    }

    void carry(Floor &floor) const {
        const std::vector<double> sunk = sunk_under(floor);
        if (sunk.empty()) return;
        const auto [least, most] = std::ranges::minmax(sunk);
        const double middle = (least + most) / 2, off = (most - least) / 2;
        floor.level = Length::mm(std::max(floor.level.mm() - middle, 1.0));
        if (off > told_from)
            at_.tell(
                "floor-carried", {about::Floor{floor.name}},
                said("it is carried along with the logs that it lies in: these are lifted unevenly, and its "
                     "timbers, which lie level, then lie up to %1 higher or lower in them than they were "
                     "drawn",
                     in_mm(off)),
                said("measure where its timbers lie in their logs before pockets are cut"));
    }

    Rebuild &at_;
    const Shell &was_;
};

} // namespace

double Rebuild::slant(Index<WallPlace> wall, double x) const {
    if (!level) return 0;
    const auto ends = level->walls.find(plan.walls[wall].name);
    if (ends == level->walls.end()) return 0;
    const auto &meetings = plan.walls[wall].meetings;
    return through(meetings.front().x, ends->second.left, meetings.back().x, ends->second.right).at(x);
}

double Rebuild::sunk(Index<WallPlace> wall, double x) const {
    return level ? slant(wall, x) + (level->zero - level->zero_found) : 0;
}

void set_level(Rebuild &at) {
    if (at.level) Carrying(at).all();
}

} // namespace roundlay
