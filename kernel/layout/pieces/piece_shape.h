// What a piece is cut from, as numbers: the one answer to whether two pieces are alike, for grouping them,
// for whoever keeps what is made of them, and for the code on a tag.
#pragma once

#include "kernel/layout/cuts/numbers.h"
#include "kernel/layout/layout.h"

#include <cstdint>
#include <string>

namespace roundlay {

using PieceShape = CutNumbers;

/// All that the wood of a piece depends on, and no tag or name.
PieceShape shape_of_wood(const Piece &piece);

/// The wood and what else a person makes of it: kinds of its ends, shoulders, finish, old or new.
PieceShape shape_as_made(const Piece &piece);

/// Equal in kind, and every number to a millionth of a millimetre: over the area of a seam a thousandth would
/// be a visible overlap. Compared, not rounded: rounding parts equal numbers at its half steps.
bool alike(const PieceShape &a, const PieceShape &b);

/// The same bytes for the same numbers, to the last digit.
std::string bytes_of(const PieceShape &shape);

/// For a person to hold a tag against a list: by hundredths of a millimetre, whose half steps lie where
/// nobody states a length.
std::uint32_t digest_of(const PieceShape &shape);

} // namespace roundlay
