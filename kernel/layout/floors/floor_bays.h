// The stretches across a room that walls along the joists leave between them.
#pragma once

#include "kernel/layout/floors/room.h"

#include <utility>
#include <vector>

namespace roundlay {

class FloorBays {
  public:
    using Bay = std::pair<double, double>; ///< from and to, across the room

    /// Of a room without walls in it.
    FloorBays() = default;
    FloorBays(const Plan &plan, const FloorPlace &room);

    /// A wall that stands in the room and does not part it along the joists; nullptr: there is none, and the
    /// bays are right.
    const WallPlace *in_the_way() const { return in_the_way_; }

    /// The bay that holds a stretch across the room whole; nullptr where a wall stands in it.
    const Bay *around(double from, double to) const;

    /// The bays in which a joist lies: in a strip too narrow for one, as between a partition and a wing's
    /// wall, there is nothing for a beam to carry.
    std::vector<Bay> with(const std::vector<double> &joists) const;

    /// Whether one wall alone stands between two bays, so that the beams of both lie in it.
    bool are_neighbours(const Bay &bay, const Bay &next) const;

  private:
    std::vector<Bay> bays_;
    const WallPlace *in_the_way_ = nullptr;
};

} // namespace roundlay
