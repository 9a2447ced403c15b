// What of its section a mended log keeps, as geometry: a fact for whoever judges it, and no verdict.
#pragma once

#include "kernel/layout/piece.h"
#include "kernel/measure/said.h"

#include <vector>

namespace roundlay {

/// By the rectangle of the log's hewn section where least is left, b wide and h high: of one that loses d of
/// its side (b - d) / b of area b h and of section modulus b h^2 / 6 for loads from above, of one that loses
/// d from below or above (h - d) / h and the square of that. A level half-lap leaves 25 % of the modulus, an
/// upright one 50 % (derived). Nothing is counted for the new wood, and a piece let into a part of a face
/// counts as if the whole face were gone over its length.
struct SectionLeft {
    double area = 1, modulus = 1; ///< parts of the whole
    double width = 0, height = 0; ///< of the log there, mm
    double taken = 0;             ///< d, mm
    bool from_side = false;       ///< else from above or below
};

/// By each mend in that piece, in cutting order. Of round and waned logs none: a rectangle says too much of
/// them.
std::vector<SectionLeft> sections_left(const Piece &piece);

/// With formula, inputs and caution; percents rounded down.
Said said_of(const SectionLeft &left);

} // namespace roundlay
