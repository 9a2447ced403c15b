// What a person states of a log as it lies there: finish, fabric, bow, marks.
#pragma once

#include "kernel/layout/layout.h"

#include <string>

namespace roundlay {

/// Puts it down with a piece of that wall, whose round and number are known. Where it is stated twice, the
/// later counts; what is stated of a piece goes before what is stated of its round.
void note_own(const Shell &shell, const std::string &wall, Piece &piece);

} // namespace roundlay
