// What stands on a template: its name, where it belongs, and the pieces that it is for.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/pattern/shapes.h"

namespace roundlay::sheets {

/// Puts the words inside the outline that is on the board, all within one of the windows (the sheets that it
/// is laid over), so that none is cut; an arrow up beside them. Where there is no room for all its pieces the
/// last line says that there are more and where they are listed.
void add_template_words(Board &board, const PrintedShape &shape, const Words &words,
                        const std::vector<Rect> &windows);

} // namespace roundlay::sheets
