// Paints a sheet of paper as the exporters draw it.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

class QPainter;

namespace roundlay::window {

/// `painter`'s units are millimetres, origin in the sheet's upper left corner, y downward.
void paint_sheet(QPainter &painter, const sheets::Sheet &sheet);

} // namespace roundlay::window
