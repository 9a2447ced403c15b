#include "exporters/sheets/tag/tag_place.h"

#include "kernel/layout/plan/wall_side.h"

namespace roundlay::sheets {

TagFace tag_face(const Piece &piece, double width, double height) {
    if (piece.timber) return TagFace::top;
    if (piece.mends) return TagFace::showing;
    const bool large = piece.blank.width >= width && piece.blank.height >= height;
    return piece.datum.kind == EndKind::corner && large ? TagFace::end_grain : TagFace::inside;
}

std::string staple_words(const Layout &layout, const Piece &piece, TagFace face, const Words &words) {
    switch (face) {
    case TagFace::end_grain:
        return words.say("Staple to the end grain of its datum end.");
    case TagFace::top:
        return words.say("Staple to its top, at its datum end, clear of the pocket.");
    case TagFace::showing:
        return words.say("Staple to a face that shows in the mended log.");
    case TagFace::inside:
        break;
    }
    if (is_partition(layout, piece.wall))
        return words.say("Staple to the face that looks %1, at its datum end.",
                         words.word(side_of_wall(layout, piece.wall, false)));
    return words.say("Staple to its inside face, at its datum end.");
}

std::string right_words(const Layout &layout, const Piece &piece, const Words &words) {
    return words.word(side_of_wall(layout, piece.wall, true));
}

} // namespace roundlay::sheets
