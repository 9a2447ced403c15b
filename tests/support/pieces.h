// Pieces as tests look for them.
#pragma once

#include "kernel/layout/layout.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <string_view>

namespace roundlay::test {

/// The piece of that tag, of which there must be one; lives as long as the layout.
inline const Piece &piece(const Layout &layout, std::string_view tag) {
    const auto found = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                    [&](const Piece &p) { return p.tag == tag; });
    REQUIRE(found != layout.pieces.end());
    return *found;
}

} // namespace roundlay::test
