#include "kernel/shell/partition_edit.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace roundlay {

namespace {

/// The outside face of a wall, in plan.
struct Face {
    double x = 0, y = 0, dx = 1, dy = 0, length = 0;
};

std::vector<Face> faces_of(const Shell &shell) {
    std::vector<Face> faces;
    double x = 0, y = 0;
    for (const Wall &wall : shell.walls) {
        const double turn = wall.heading * std::numbers::pi / 180, length = wall.length.mm();
        faces.push_back({x, y, std::cos(turn), std::sin(turn), length});
        x += length * faces.back().dx;
        y += length * faces.back().dy;
    }
    return faces;
}

/// Along a line that leaves the face inward at `at`: the nearest other face that it meets.
std::optional<std::size_t> across(const std::vector<Face> &faces, std::size_t from, double at) {
    constexpr double parallel = 1e-6;
    const Face &start = faces[from];
    const double x = start.x + at * start.dx, y = start.y + at * start.dy, dx = -start.dy, dy = start.dx;
    std::optional<std::size_t> found;
    double nearest = HUGE_VAL;
    for (std::size_t i = 0; i < faces.size(); ++i) {
        const Face &f = faces[i];
        const double turn = dx * f.dy - dy * f.dx;
        if (i == from || std::abs(turn) < parallel) continue;
        const double away = ((f.x - x) * f.dy - (f.y - y) * f.dx) / turn;
        const double there = ((f.x - x) * dy - (f.y - y) * dx) / turn;
        if (away <= 0 || away >= nearest || there < 0 || there > f.length) continue;
        nearest = away;
        found = i;
    }
    return found;
}

/// The wall that a partition square to `from` ends in.
std::optional<std::string> end_of(const Shell &shell, const std::string &from, Length from_left) {
    const auto wall =
        std::find_if(shell.walls.begin(), shell.walls.end(), [&](const Wall &w) { return w.name == from; });
    if (wall == shell.walls.end() || from_left <= Length() || from_left >= wall->length) return {};
    const auto end =
        across(faces_of(shell), static_cast<std::size_t>(wall - shell.walls.begin()), from_left.mm());
    if (!end) return {};
    return shell.walls[*end].name;
}

bool is_named(const Shell &shell, const std::string &name) {
    const auto same = [&](const auto &part) { return part.name == name; };
    return std::any_of(shell.walls.begin(), shell.walls.end(), same) ||
           std::any_of(shell.partitions.begin(), shell.partitions.end(), same) ||
           std::any_of(shell.floors.begin(), shell.floors.end(), same);
}

} // namespace

std::string free_part_name(const Shell &shell, char otherwise) {
    for (char letter = 'A'; letter <= 'Z'; ++letter)
        if (!is_named(shell, std::string(1, letter))) return std::string(1, letter);
    for (int number = 1;; ++number)
        if (std::string name = otherwise + std::to_string(number); !is_named(shell, name)) return name;
}

std::optional<Shell> with_partition(const Shell &shell, const std::string &from, Length from_left,
                                    const std::string &to) {
    const auto end = end_of(shell, from, from_left);
    if (!end) return {};
    Shell next = shell;
    Partition partition;
    partition.name = free_part_name(shell, 'P');
    partition.from = from;
    partition.from_left = from_left;
    partition.to = to.empty() ? *end : to;
    next.partitions.push_back(partition);
    return next;
}

std::optional<Shell> partition_moved(const Shell &shell, std::size_t partition, Length from_left) {
    if (partition >= shell.partitions.size()) return {};
    Shell next = shell;
    Partition &moved = next.partitions[partition];
    moved.from_left = from_left;
    if (moved.heading) return next; // what it ends in is the person's to state
    const auto end = end_of(shell, moved.from, from_left);
    if (!end) return {};
    moved.to = *end;
    return next;
}

Shell without_partition(const Shell &shell, const std::string &name) {
    const auto is_it = [&](const Partition &p) { return p.name == name; };
    Shell next = shell;
    if (std::erase_if(next.partitions, is_it) == 0) return next;
    std::erase_if(next.corners, [&](const CornerNotch &c) { return c.first == name || c.second == name; });
    std::erase_if(next.floors, [&](const Floor &f) { return f.from == name || f.to == name; });
    const auto hangs = [&](const auto &part) { return part.wall == name; };
    std::erase_if(next.openings, hangs);
    std::erase_if(next.own_logs, hangs);
    std::erase_if(next.bores, hangs);
    std::erase_if(next.mends, hangs);
    std::erase_if(next.steps, hangs);
    if (next.rounds.full_first == name) next.rounds.full_first.clear();
    for (const Partition &other : shell.partitions)
        if (other.from == name || other.to == name) next = without_partition(next, other.name);
    return next;
}

} // namespace roundlay
