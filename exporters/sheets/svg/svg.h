// Writes one sheet as SVG 1.1: real text, true circles, one class for each kind of line.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <string>

namespace roundlay::sheets {

/// UTF-8. The same sheet gives the same bytes. Lengths are millimetres of paper. Text names the program's
/// own font and states its width, so that another font cannot run over its neighbours.
std::string write_svg(const Sheet &sheet);

} // namespace roundlay::sheets
