// Tables of what is built into the logs: openings with their frames' spaces, floors with a screen of their
// spans.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/voice.h"
#include "kernel/layout/layout.h"

namespace roundlay {

/// One row for each opening: the logs over and under it, the space over its frame and what that rests on.
Table opening_table(const Shell &shell, const Layout &layout, Language language = Language::english);
/// Said by that voice.
Table opening_table(const Shell &shell, const Layout &layout, const Voice &voice);

/// One row for each joist, beam and trimmer; loads and stresses where a live load is stated, then what they
/// rest on.
Table floor_table(const Shell &shell, const Layout &layout, Language language = Language::english);
Table floor_table(const Shell &shell, const Layout &layout, const Voice &voice);

/// One row for each log of each wall, openings aside: where its wood lies over the foundation, at the wall's
/// left and right end seen from outside. A sill or a head between one log's top and the next one's under face
/// costs no sliver.
Table seam_table(const Shell &shell, Language language = Language::english);

} // namespace roundlay
