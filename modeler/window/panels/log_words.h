// One piece in words and numbers.
#pragma once

#include "modeler/window/desk/state.h"

#include <QString>

namespace roundlay::window {

/// Rich text: blank, volume, weight, ends, neighbours, place in the raise, equal pieces, cuts and findings.
QString words_of_piece(const State &state, Index<Piece> piece);
/// Rich text: the log over an opening and the space over its frame; what they rest on stands with them.
QString words_of_opening(const State &state, int opening);

} // namespace roundlay::window
