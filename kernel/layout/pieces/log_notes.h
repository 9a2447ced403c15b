// What a person states of a log as it lies there: finish, fabric, bow, marks.
#pragma once

#include "kernel/layout/piece.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/finding.h"

#include <string>
#include <vector>

namespace roundlay {

/// Puts it down with a piece of that wall, whose round and number are known. Where it is stated twice, the
/// later counts; what is stated of a piece goes before what is stated of its round.
void note_own(const Shell &shell, const std::string &wall, Piece &piece);

/// What is stated of a piece that a round does not have would vanish in silence: that is an error.
Findings check_own_pieces(const Shell &shell, const Plan &plan, const Indexed<Piece> &pieces);

} // namespace roundlay
