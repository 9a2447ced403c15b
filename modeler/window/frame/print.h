// Cut sheets on a printer, after a look at them.
#pragma once

#include "modeler/window/desk/state.h"

class QWidget;

namespace roundlay::window {

/// Draws the sheets aside with a way to stop, then shows them as they will be printed.
void preview_sheets(const StatePtr &state, QWidget *parent);

} // namespace roundlay::window
