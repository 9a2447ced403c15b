// What each cut of a piece is called: on its sheet, in its list of operations, on its faces in STEP.
#pragma once

#include "kernel/layout/piece.h"

#include <string>
#include <vector>

namespace roundlay {

/// One for each of Piece::cuts: "3" of those that are numbered, in cutting order; "K2" of pockets and "P4"
/// (letter_of) of bores of each use, from the datum end; empty of what is hewn before, and of cheeks.
std::vector<std::string> cut_marks(const Piece &piece);

} // namespace roundlay
