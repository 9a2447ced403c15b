// Where the old wood of a found log stands in a state of the house.
#pragma once

#include "kernel/layout/layout.h"

#include <vector>

namespace roundlay {

/// Logs of `now` that are made of the wood of that piece of `found`, the house as it was found. None where
/// new wood has come in its place, or a log that reaches past the opening at which the found one ended: old
/// wood does not grow.
std::vector<Index<Piece>> standing_as(const Layout &found, Index<Piece> piece, const Layout &now);

/// Does that state say of any log whether its wood is old? One that does not, a house as it was drawn before
/// anybody measured it, shows no new wood either: what stays is not counted by it.
bool tells_of_old_wood(const Layout &state);

} // namespace roundlay
