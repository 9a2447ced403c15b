// The piece of a layout with that tag.
#pragma once

#include "kernel/layout/layout.h"
#include "tests/support/catch.h"

#include <string>

namespace roundlay::test {

/// Fails where there is none.
inline Index<Piece> tagged(const Layout &layout, const std::string &tag) {
    for (const auto i : layout.pieces.indices())
        if (layout.pieces[i].tag == tag) return i;
    FAIL("no piece " << tag);
    return {};
}

} // namespace roundlay::test
