// Openings beside and over steps of the foundation.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Steps that reach up into an opening, or leave too little wood beside it. False on an error.
bool check_openings_on_steps(const Shell &shell, Layout &layout);

} // namespace roundlay
