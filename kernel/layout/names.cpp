#include "kernel/layout/layout.h"

namespace roundlay {

const char *name_of(TimberUse use) {
    switch (use) {
    case TimberUse::trimmed:
        return "trimmed joist";
    case TimberUse::trimmer:
        return "trimmer";
    case TimberUse::beam:
        return "beam";
    case TimberUse::joist:
        break;
    }
    return "joist";
}

const char *side_word(const Piece &piece, bool inside) {
    if (piece.timber >= 0) return inside ? "left" : "right";
    return inside ? "inside" : "outside";
}

int wall_named(const Layout &layout, const std::string &name) {
    for (std::size_t i = 0; i < layout.walls.size(); ++i)
        if (layout.walls[i].name == name) return static_cast<int>(i);
    return -1;
}

} // namespace roundlay
