// Writes one sheet as DXF (AC1015, the release of the year 2000): true circles and arcs, closed polylines,
// text as text, one layer for each kind of line or for what the items name.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <string>

namespace roundlay::sheets {

/// ASCII; letters beyond it as \U+XXXX. Millimetres at full size, $INSUNITS 4. The same sheet gives the same
/// bytes. Pictures and links are left out.
std::string write_dxf(const Sheet &sheet);

} // namespace roundlay::sheets
