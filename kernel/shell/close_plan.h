// Lengths of walls that follow from the others'.
//
// A plan whose walls are not square closes at lengths that nobody measures to a hair: a wall 5.6 m long at a
// slant may have to be 5638.155725 mm. So the length of one wall or of two may be left open, and the walk
// round the outside, which must end where it began, says what it is.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay {

struct OpenPlan {
    std::size_t wall = 0; ///< which cannot be worked out
    std::string message, expected;
};

/// Sets the length of every wall that `closes`. Something only where that cannot be: more than two such
/// walls, two that run in one direction, or a length that would not be over 0. One open length closes the
/// walk along its own direction only; whether it closes across that is for layout to find.
std::optional<OpenPlan> close_plan(std::vector<Wall> &walls);

} // namespace roundlay
