// Taking down and raising as lists to be ticked off on the site.
#pragma once

#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

/// One row for each piece, the last that was raised first: pegs to draw, how far it must rise, its weight,
/// and what is held by nothing but its pegs then.
Subject taking_down_subject();

/// One row for each piece as it goes up, with a box for *up* and one for *pegged*.
Subject raising_subject();

} // namespace roundlay::sheets
