// How far a piece must come up before it is free.
#pragma once

#include "kernel/layout/wood/body.h"

namespace roundlay {

/// Millimetres, one for each of Layout::pieces: moved straight up by so much, the piece lies over all wood
/// that is raised before it and touches it, so that it can be swung away. bodies: by Layout::models index.
Indexed<double, Piece> rises_to_clear(const Layout &layout, const Bodies &bodies);

} // namespace roundlay
