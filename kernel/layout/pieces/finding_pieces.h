// Which pieces a finding is about, for whoever shows it.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Ascending: named by tag in what it is about, or of a round in what it says;
/// else by opening, wall and round, or corner. Empty where the finding is about the shell as a whole.
std::vector<Index<Piece>> pieces_of(const Finding &finding, const Shell &shell, const Layout &layout);

} // namespace roundlay
