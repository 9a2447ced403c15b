// A hole in a floor, for stairs or a chimney.
#pragma once

#include "kernel/layout/floors/floor_bays.h"
#include "kernel/measure/said.h"
#include "kernel/shell/shell.h"

#include <functional>
#include <optional>
#include <vector>

namespace roundlay {

/// In the floor's frame.
struct Hole {
    double left = 0, right = 0, near = 0, away = 0;
    bool joist_left = true, joist_right = true; ///< else the room's own side is its edge
    bool trims_near = true, trims_away = true;  ///< else the wall is
};

/// Where it is to lie, and how much room a joist and a trimmer take beside it.
struct HoleRoom {
    const Shell &shell;
    const Plan &house;
    const FloorPlace &room;
    const FloorBays &bays;
    double joist = 0, trimmer = 0;
};

using RefuseHole = std::function<void(Said what, std::optional<Said> advice)>;

/// Nothing where it cannot be trimmed, among those that are there already: `refuse` is told why.
std::optional<Hole> hole_of(const HoleRoom &in, const FloorOpening &stated, const std::vector<Hole> &others,
                            const RefuseHole &refuse);

/// Whether a beam across the room whose middle lies there, so far from its sides and a joist's width on,
/// meets one.
bool crosses(const std::vector<Hole> &holes, double y, double reach);

/// The nearest places to either side of y, between `within`, where a beam meets none.
std::optional<Said> clear_of(const Shell &shell, const std::vector<Hole> &holes, double y, double reach,
                             const FloorBays::Bay &within);

} // namespace roundlay
