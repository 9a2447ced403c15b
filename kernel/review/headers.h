// The logs over openings: whether they bear beside them, and what is left of them over them.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// `advises`: where the opening would have to go is tried, which lays the shell out some times. Nothing where
/// the layout has no pieces.
Findings review_headers(const Shell &shell, const Layout &layout, bool advises);

} // namespace roundlay
