// The piece as it is drawn: its wood, and its wood with stretches of a long log left out.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/cut_sheet/hidden_lines.h"
#include "exporters/sheets/cut_sheet/ruler.h"
#include "kernel/layout/wood/body.h"

namespace roundlay::sheets {

/// For the faces and ends: the whole piece. Bores as rims only where they are seen from the side.
Scene whole_scene(const Body &body, View view);

/// For the isometric view: each shown stretch is a solid of its own, moved together to what the ruler leaves
/// between them. Bores move along with their stretch.
Scene broken_scene(const Body &body, const Ruler &ruler);

} // namespace roundlay::sheets
