// Samples as they stand in a document.
#pragma once

#include "kernel/shell/shell.h"

#include <string>

namespace roundlay {

/// What fits the shell next (`kernel/design/samples.h`), each line behind a `#`: with the # taken away it is
/// part of the document.
std::string sample_comments(const Shell &shell);

} // namespace roundlay
