// Parts of shells, as tests put them together.
#pragma once

#include "kernel/shell/shell.h"

#include <string>
#include <utility>
#include <vector>

namespace roundlay::test {

/// Walls of so many rounds.
inline void give_walls(Shell &shell, std::vector<Wall> walls, Length thickness, int count, Length pitch,
                       Length gap) {
    shell.walls = std::move(walls);
    shell.thickness = thickness;
    shell.rounds.count = count;
    shell.rounds.pitch = pitch;
    shell.rounds.gap = gap;
}

inline Shell hewn_shell(const std::string &name, std::vector<Wall> walls, Length thickness, int count,
                        Length pitch, Length gap) {
    Shell shell;
    shell.name = name;
    give_walls(shell, std::move(walls), thickness, count, pitch, gap);
    return shell;
}

/// From one wall, at that place of it, straight across to another.
inline Partition partition(const std::string &name, const std::string &from, Length from_left,
                           const std::string &to) {
    Partition made;
    made.name = name, made.from = from, made.to = to;
    made.from_left = from_left;
    return made;
}

/// A window without a name.
inline Opening hole(const std::string &wall, Length from_left, Length sill, Length width, Length height) {
    Opening made;
    made.wall = wall;
    made.from_left = from_left, made.width = width;
    made.sill = sill, made.height = height;
    return made;
}

/// The same in millimetres.
inline Opening window(const std::string &wall, double from_left, double sill, double width, double height) {
    return hole(wall, Length::mm(from_left), Length::mm(sill), Length::mm(width), Length::mm(height));
}

/// Joists from wall to wall, in millimetres: their tops at `level`, their ends `bearing` deep in square
/// pockets.
inline Floor joists(const std::string &name, const std::string &from, const std::string &to, double level,
                    TimberSize size, double bearing) {
    Floor floor;
    floor.name = name, floor.from = from, floor.to = to;
    floor.level = Length::mm(level), floor.bearing = Length::mm(bearing);
    floor.joist = size;
    return floor;
}

/// The same with ends that widen by `tail` on either side.
inline Floor tailed_joists(const std::string &name, const std::string &from, const std::string &to,
                           double level, TimberSize size, double bearing, double tail) {
    Floor floor = joists(name, from, to, level, size, bearing);
    floor.pocket = PocketKind::tailed;
    floor.tail = Slope::rise_per_run(tail);
    return floor;
}

inline FoundationStep step(const std::string &wall, double from_left, double width, double rise) {
    return {wall, Length::mm(from_left), Length::mm(width), Length::mm(rise)};
}

/// A rod through all rounds, in millimetres.
inline StatedBore rod(const std::string &wall, double from_left, double diameter) {
    StatedBore bore;
    bore.use = BoreUse::rod, bore.wall = wall;
    bore.from_left = Length::mm(from_left), bore.diameter = Length::mm(diameter);
    return bore;
}

} // namespace roundlay::test
