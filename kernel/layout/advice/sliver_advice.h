// What to change so that an opening leaves no thin wood: tried before it is said.
#pragma once

#include "kernel/layout/advice/trial.h"
#include "kernel/layout/openings/openings.h"

namespace roundlay {

/// Puts behind each warning of thin wood at an opening the least change of its sill or its top, in figures as
/// they are printed, with which that warning goes and no other comes,
/// whatever else is refused.
void advise_on_slivers(const Shell &shell, Layout &layout, const std::vector<Sliver> &slivers,
                       const LayOut &try_out);

} // namespace roundlay
