// A small shell written by hand: walls, pieces and bodies, for exporting.
#pragma once

#include "kernel/layout/wood/body.h"
#include "kernel/shell/shell.h"

namespace roundlay::hand_made {

struct HandMadeShell {
    Shell shell;
    Layout layout;
    Bodies bodies; ///< by model
};

/// Four walls of `rounds` logs. With `alike` the logs of one wall are equal, and those of the wall across
/// too; without, every log has a length of its own.
HandMadeShell four_walls(int rounds, bool alike);

} // namespace roundlay::hand_made
