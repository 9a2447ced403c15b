// All that the wood of a piece is made from, as bytes: pieces with the same bytes are cut alike.
#pragma once

#include "kernel/layout/layout.h"

#include <string>

namespace roundlay::window {

std::string piece_key(const Piece &piece);

} // namespace roundlay::window
