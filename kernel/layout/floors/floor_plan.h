// Which timbers a floor has and where they end, before any wood is cut. All in the floor's frame.
#pragma once

#include "kernel/layout/floors/room.h"
#include "kernel/layout/found.h"
#include "kernel/layout/index.h"
#include "kernel/shell/shell.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace roundlay {

struct PlannedTimber;

/// What one end of a timber lies in: a wall, or another timber of the floor.
struct TimberEnd {
    Index<WallPlace> wall;                       ///< where it has no carrier
    std::optional<Index<PlannedTimber>> carrier; ///< the timber, where it is one
    double bearing = 0;                          ///< how far it lies in it, square to its face
    /// By how much that face runs along the timber per unit to the timber's left, with one's face to its far
    /// end: its end is sawn so. 0 where they are square.
    double lean = 0;
    bool tailed = false; ///< widens toward its end
    /// Of its end, where it is cut from below so that the carrier keeps wood; 0: the timber's whole height.
    double height = 0;

    /// Its bearing along the timber.
    double along() const { return lean == 0 ? bearing : bearing * std::hypot(1, lean); }
};

struct PlannedTimber {
    TimberUse use = TimberUse::joist;
    Vec2 from, to; ///< its middle line, between the faces of what carries it
    TimberEnd datum, far;
    double width_from = 0, width_to = 0; ///< at its two ends, bearings included
    double height_from = 0, height_to = 0;
    double top = 0;            ///< over the foundation
    std::vector<double> rests; ///< along it from `from`: middles of the beams that it lies on
    double load_width = 0;

    bool across() const { return use == TimberUse::beam || use == TimberUse::trimmer; }
    double clear() const { return length(to - from); }
    double widest() const { return std::max(width_from, width_to); }
    double whole() const { return datum.along() + clear() + far.along(); } ///< along its middle line
    /// What its longer side reaches past the middle line's end.
    double past(const TimberEnd &end) const { return std::abs(end.lean) * widest() / 2; }
    /// Along it from its datum end, bearing included.
    double width(double x) const { return width_from + (width_to - width_from) * x / whole(); }
    double height(double x) const { return height_from + (height_to - height_from) * x / whole(); }
    /// Where its middle line passes y of the floor.
    double along(double y) const { return datum.along() + y - from.y; }
};

struct FloorPlan {
    FloorPlace place;
    double tail = 0;                ///< how much each cheek of a tailed end widens, per unit of length
    Indexed<PlannedTimber> timbers; ///< a carrier comes before what it carries
};

/// On an error the floor has no right plan.
Found<FloorPlan> plan_floor(const Shell &shell, const Plan &house, std::size_t floor);

} // namespace roundlay
