// Floors and their timbers as they lie.
#pragma once

#include "kernel/geometry/vec.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/kinds.h"

#include <cmath>
#include <string>
#include <vector>

namespace roundlay {

struct Piece;
struct Timber;
struct FloorPlace;

/// "joist", "trimmed joist", "trimmer", "beam".
const char *name_of(TimberUse use);

/// What a timber's end lies in, and what is left of the timber there.
struct TimberHold {
    std::optional<Index<Timber>> carrier = std::nullopt; ///< none: a wall
    double neck = 0; ///< its width at the face of the carrier: less than the timber's where the end is tailed
    double height = 0; ///< of its end: less than `full` where wood is cut away under it
    double full = 0;   ///< the timber's own height there
    double reach =
        0; ///< where it is held in the carrier, along that one's clear length from its `from`; 0 in a wall
};

/// A beam that a timber runs over.
struct TimberRest {
    Index<Timber> beam;
    double at = 0;     ///< the beam's middle, along the timber's clear length from its `from`
    double reach = 0;  ///< where the timber lies on the beam, along that one's clear length from its `from`
    double width = 0;  ///< of the beam
    double height = 0; ///< of the timber over the beam: less than `full` where it is cut from under it
    double full = 0;   ///< the timber's own height there
};

/// A joist or another timber of a floor, over its piece.
struct Timber {
    TimberUse use = TimberUse::joist;
    Index<Piece> piece;
    Index<FloorPlace> floor;
    Vec2 from, to; ///< its middle line in the floor's frame, between the faces of what carries its ends
    std::vector<double> spans;               ///< clear, from bearing to bearing
    double load_width = 0;                   ///< how wide a strip of floor it carries
    double bearing_from = 0, bearing_to = 0; ///< how far its ends lie in what carries them
    TimberHold hold_from, hold_to;
    std::vector<TimberRest> rests; ///< from its `from` on: one less than its spans
    double laid_at = 0;            ///< its place in the raise: as if its middle were this high
};

/// A floor where it lies. Frame: origin at the room's left front corner at the foundation, seen with one's
/// back to the wall that the joists start in; x to the right along that wall, y away from it, z up.
struct FloorPlace {
    std::string name;
    Frame frame;
    double width = 0, depth = 0; ///< clear, along x and y: where the two walls stand nearest
    double rise = 0;  ///< by which the wall `to` stands further away per unit of x; 0 where they are parallel
    double level = 0; ///< tops of the joists
    Index<WallPlace> from, to;

    /// From wall to wall at that x.
    double depth_at(double x) const { return depth + (rise > 0 ? rise * x : rise * (x - width)); }
    double greatest_depth() const { return depth + std::abs(rise) * width; }
};

} // namespace roundlay
