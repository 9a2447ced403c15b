// One piece in words and numbers.
#pragma once

#include "modeler/window/desk/state.h"

#include <QString>

namespace roundlay::window {

/// Rich text: blank, volume, weight, ends, neighbours, place in the raise, equal pieces, cuts and findings.
QString words_of_piece(const State &state, int piece);

} // namespace roundlay::window
