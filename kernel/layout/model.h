// Which pieces are alike.
#pragma once

#include "kernel/layout/index.h"

#include <vector>

namespace roundlay {

struct Piece;

/// Pieces that are alike: same blank, same cuts, whatever they are called.
struct Model {
    std::vector<Index<Piece>> pieces; ///< in tag order; the first one stands for all
};

} // namespace roundlay
