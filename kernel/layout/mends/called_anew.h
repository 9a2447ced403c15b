// Who meets whom once logs are mended: a joint that has come into new wood is told by that wood's tag.
#pragma once

#include "kernel/layout/piece.h"
#include "kernel/layout/walls.h"

#include <string>

namespace roundlay {

/// Puts the tag of the other wood into the mends of a piece that name none yet.
void name_mends(Piece &piece, const std::string &tag);

/// Makes all pieces name one another as their wood lies: at corners, in pockets, over and under one another.
/// New wood stands behind the log that it comes into.
void call_anew(Indexed<Piece> &pieces, const Plan &plan);

} // namespace roundlay
