// Which cuts of an old log are still to be made, so that nobody cuts a tail again that has held for a hundred
// years.
#pragma once

#include "kernel/layout/layout.h"

#include <optional>
#include <vector>

namespace roundlay {

/// One for each of Piece::cuts; nothing of an old log that is no piece of the house as it was found, where
/// nobody can say what it has already.
using CutsToMake = std::optional<std::vector<bool>>;

/// Of every piece of `now`. New wood has nothing yet. Of old wood everything was found that lies in the same
/// place of the same piece of `found` (by its tag, else by what is written on it alone), but mends.
Indexed<CutsToMake, Piece> cuts_to_make(const Layout &found, const Layout &now);

} // namespace roundlay
