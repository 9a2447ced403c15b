// The wood of one timber of a floor: its piece, and the pockets that its ends ask for.
#pragma once

#include "kernel/layout/floors/floor_plan.h"
#include "kernel/layout/piece.h"

namespace roundlay {

/// How an end of a timber lies, in the world.
struct LyingEnd {
    Vec3 tip; ///< middle of its end face, at its top
    Vec3 out; ///< unit, level, from there back along the timber
    double depth = 0, half_at_tip = 0, half_at_face = 0;
    Plane bed;                ///< its underside, normal upward
    double low = 0, high = 0; ///< heights of the underside over the bearing, least and most
    double top = 0;
};

/// Blank, frame and cuts; tag, number and model are for the caller. `carriers` are the tags that its ends,
/// then its rests, lie on.
Piece piece_of(const PlannedTimber &timber, const FloorPlan &plan, const std::vector<std::string> &carriers);

LyingEnd lying_end(const PlannedTimber &timber, const FloorPlace &floor, End end, double tail);

/// The pocket for an end, in the frame of the piece that it lies in.
PocketCut pocket_for(const LyingEnd &end, const Piece &in, const std::string &holds);

} // namespace roundlay
