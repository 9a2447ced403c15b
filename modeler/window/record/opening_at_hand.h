// What the record calls an opening of the plan, and what it may be measured from.
#pragma once

#include "modeler/window/desk/state.h"
#include "modeler/window/record/house_fields.h"

namespace roundlay::window {

/// `opening`: index into Shell::openings of that state; none where it has no such opening.
std::optional<OpeningAtHand> opening_at_hand(const State &state, int opening);

} // namespace roundlay::window
