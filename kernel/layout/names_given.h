// What the program calls things that the person has given no name, as values.
//
// Pieces and cuts hold names as plain text, the person's own and the program's. Whoever tells them in another
// language asks here which are the program's.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/measure/said.h"

#include <string>
#include <utility>
#include <vector>

namespace roundlay {

/// "door 1 in wall A", "step 2", "rod 1", each with what it says. None that a person has given to a thing of
/// their own: it stays as they wrote it.
std::vector<std::pair<std::string, Said>> names_given(const Shell &shell, const Layout &layout);

} // namespace roundlay
