// What a chosen thing is made of, and which findings speak of it.
#pragma once

#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/state.h"

namespace roundlay::window {

bool is_part_of(const Chosen &thing, const Piece &piece, const Layout &layout, const Shell &shell);

/// Indices into State::job.findings.
std::vector<int> findings_about(const Chosen &thing, const State &state);

} // namespace roundlay::window
