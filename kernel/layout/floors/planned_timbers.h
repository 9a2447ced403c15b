// How beams part the way of joists; and what follows once all timbers of a floor are planned: their order,
// their loads, what lies on what.
#pragma once

#include "kernel/layout/floors/floor_plan.h"
#include "kernel/layout/timber.h"

namespace roundlay {

/// Of tapered joists: toward the longer span where beams divide it; else turn about. `depth`: of the room.
bool butt_lies_at_datum(const Floor &floor, double depth, int number);

/// Half of the way from a beam y from the first wall to what carries the joists before and behind it.
double half_way(const Floor &floor, double depth, double y);

/// Beams, joists, trimmers, trimmed joists: a carrier comes before what it carries. Carriers are renumbered.
void put_carriers_first(Indexed<PlannedTimber> &timbers);

/// Of each joist half the way to its neighbours, or to the wall at the room's side where that is furthest.
/// `spacing`: of the floor.
void share_load(FloorPlan &plan, const Plan &house, double spacing);

/// The timber of a layout that a planned one becomes; `first`: the floor's first.
inline Index<Timber> timber_of(Index<PlannedTimber> planned, Index<Timber> first) {
    return Index<Timber>(first.at() + planned.at());
}

/// Of the end at x along the timber, bearing included: its least wood between there and the carrier's face.
TimberHold hold_of(const FloorPlan &plan, const PlannedTimber &t, const TimberEnd &end, double x,
                   Index<Timber> first);

/// The beam under a place along a joist.
Index<PlannedTimber> beam_at(const FloorPlan &plan, const PlannedTimber &t, double rest);

/// On that beam.
TimberRest rest_of(const FloorPlan &plan, const PlannedTimber &t, double at, Index<Timber> first);

/// A beam's top lies under the least high of the joists that it carries. False where a beam carries none.
bool rest_on_beams(FloorPlan &plan, double joist_height);

} // namespace roundlay
