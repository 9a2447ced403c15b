#include "kernel/measured/measured_shell.h"

#include <algorithm>

namespace roundlay {

namespace {

std::vector<OwnLog> stated_of(const Shell &shell, const FoundPlace &place) {
    std::vector<OwnLog> all;
    for (const OwnLog &log : shell.own_logs)
        if (log.wall == place.wall && log.round == place.round) all.push_back(log);
    return all;
}

const Wall *wall_of(const Shell &shell, const std::string &name) {
    const auto wall = std::ranges::find(shell.walls, name, &Wall::name);
    return wall == shell.walls.end() ? nullptr : &*wall;
}

bool stands_otherwise(const Shell &below, const Shell &now, const std::string &name) {
    const Wall *was = wall_of(below, name), *is = wall_of(now, name);
    return was && is ? !(*was == *is) : was != is;
}

} // namespace

Record left_as_found(const Record &record, const Shell &below, const Shell &now) {
    Record left = record;
    std::erase_if(left.logs, [&](const FoundLog &log) {
        return stated_of(below, log.place) != stated_of(now, log.place);
    });
    std::erase_if(left.walls,
                  [&](const RecordedWall &wall) { return stands_otherwise(below, now, wall.wall); });
    if (below.walls != now.walls) left.diagonals.clear(); // they run through the whole plan
    return left;
}

} // namespace roundlay
