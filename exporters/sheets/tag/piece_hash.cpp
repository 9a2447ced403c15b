#include "exporters/sheets/tag/tags.h"
#include "kernel/layout/pieces/piece_shape.h"

#include <array>
#include <cstdio>

namespace roundlay::sheets {

std::string piece_hash(const Piece &piece) {
    std::array<char, 16> room{};
    std::snprintf(room.data(), room.size(), "%08x", digest_of(shape_of_wood(piece)));
    return room.data();
}

std::string tag_code(const Piece &piece, const std::string &revision) {
    return piece.tag + (revision.empty() ? "" : " r." + revision) + " " + piece_hash(piece);
}

} // namespace roundlay::sheets
