// What the weights of findings and problems are called, for people and machines alike.
#pragma once

#include "kernel/shell/finding.h"

namespace roundlay {

/// "error", "warning", "note".
const char *name_of(Weight weight);

} // namespace roundlay
