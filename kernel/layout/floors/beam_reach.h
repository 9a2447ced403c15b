// How far into a room a beam can lie so that walls carry both its ends.
#pragma once

#include "kernel/layout/floors/floor_bays.h"
#include "kernel/measure/said.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// The wall square to a beam that it meets from a place in the room, to the left (-1) or to the right (1).
std::optional<WallFace> face_beside(const Plan &plan, const FloorPlace &room, double x, double y, int way);

/// Advice for a beam one of whose ends no wall carries: the stretch nearest to where it is stated in which
/// walls carry it in all bays, each end of it tried.
Said beam_reach(const Shell &shell, const Plan &plan, const FloorPlace &room,
                const std::vector<FloorBays::Bay> &bays, const Beam &beam);

} // namespace roundlay
