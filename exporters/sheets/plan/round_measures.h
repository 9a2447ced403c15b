// Measures of one round on its plan: lengths of the walls, outside and inside, and where openings are.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct MeasuredRound {
    const Shell &shell;
    const Layout &layout;
    const Words &words;
    int round;
    double scale; ///< millimetres on paper for one of wood; the world's origin at that of the paper
};

/// Jambs of the openings that the round's logs stop at, from each wall's left outside corner; the walls'
/// lengths over their outside faces, and clear between them. Those that found no room, in words.
std::vector<std::string> add_measures(Board &board, const MeasuredRound &round);

} // namespace roundlay::sheets
