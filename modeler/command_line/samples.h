// What a newcomer adds next, written out for the shell at hand.
#pragma once

#include "kernel/shell/shell.h"

#include <string>

namespace roundlay {

/// A door, a partition and a floor as they stand in a document, each line behind a `#`. Each was tried: with
/// the # taken away, alone or all together, the shell has no errors and no warnings. What fits nowhere is
/// left out.
std::string sample_comments(const Shell &shell);

} // namespace roundlay
