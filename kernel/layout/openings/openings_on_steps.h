// Openings beside and over steps of the foundation.
#pragma once

#include "kernel/layout/foundation.h"
#include "kernel/layout/openings/openings.h"

namespace roundlay {

/// Steps that reach up into an opening, or leave too little wood beside it. Openings that are refused already
/// stay so, and nothing more is said of them.
Found<Openings> check_openings_on_steps(const Shell &shell, const Plan &plan, const Foundation &foundation,
                                        const Openings &openings);

} // namespace roundlay
