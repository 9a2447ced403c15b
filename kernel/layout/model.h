// Which pieces are alike.
#pragma once

#include <vector>

namespace roundlay {

/// Pieces that are alike: same blank, same cuts, whatever they are called.
struct Model {
    std::vector<int> pieces; ///< indices into Layout::pieces, in tag order; the first one stands for all
};

} // namespace roundlay
