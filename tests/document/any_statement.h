// Random statements: every key of the format, over the whole range that it takes.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay::test {

/// Inside a rapidcheck property. Reads back from a document; most of these shells cannot be built.
Shell any_statements();

} // namespace roundlay::test
