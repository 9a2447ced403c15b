#include "kernel/shell/plan_edit.h"

#include "kernel/measure/tidied.h"

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double square = 1e-9; // sine and cosine of right angles stated in whole degrees come this close

/// How far a walk along `heading` gets outward of a wall; outward is to the right of the walk.
double outward_part(double heading, double of_wall) {
    const double turn = (heading - of_wall) * std::numbers::pi / 180;
    return -std::sin(turn);
}

/// 1 or -1: how the neighbour's length changes for each unit outward; 0 where it is not square to the wall.
int growth(const Wall &neighbour, const Wall &wall) {
    const double part = outward_part(neighbour.heading, wall.heading);
    if (std::abs(std::abs(part) - 1) > square) return 0;
    return part > 0 ? 1 : -1;
}

/// What is measured from the corner that moved stays where it stands in the world.
void keep_places(Shell &shell, const std::string &wall, Length by) {
    for (Opening &opening : shell.openings)
        if (opening.wall == wall) opening.from_left = opening.from_left + by;
    for (Partition &partition : shell.partitions)
        if (partition.from == wall) partition.from_left = partition.from_left + by;
    for (StatedBore &bore : shell.bores)
        if (bore.wall == wall) bore.from_left = bore.from_left + by;
    for (Mend &mend : shell.mends) // a new end goes with the log's end
        if (mend.wall == wall && mend.end == LogEnd::left && mend.from && mend.to)
            mend.from = *mend.from + by, mend.to = *mend.to + by;
}

} // namespace

std::optional<Shell> wall_moved(const Shell &shell, std::size_t wall, Length outward) {
    const std::size_t count = shell.walls.size();
    const std::size_t before = (wall + count - 1) % count, after = (wall + 1) % count;
    const int ends = growth(shell.walls[before], shell.walls[wall]);
    const int starts = -growth(shell.walls[after], shell.walls[wall]);
    if (ends == 0 || starts == 0) return {};
    Shell moved = shell;
    moved.walls[before].length = tidied(moved.walls[before].length + ends * outward);
    moved.walls[after].length = tidied(moved.walls[after].length + starts * outward);
    if (moved.walls[before].length <= Length() || moved.walls[after].length <= Length()) return {};
    keep_places(moved, moved.walls[after].name, starts * outward);
    return moved;
}

std::optional<Shell> wall_lengthened(const Shell &shell, std::size_t wall, Length length) {
    const std::size_t next = (wall + 1) % shell.walls.size();
    const int grows = growth(shell.walls[wall], shell.walls[next]);
    if (grows == 0 || length <= Length()) return {};
    return wall_moved(shell, next, grows * (length - shell.walls[wall].length));
}

} // namespace roundlay
