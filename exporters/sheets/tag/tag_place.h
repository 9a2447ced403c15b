// Where on its piece a tag is stapled.
#pragma once

#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/layout.h"

#include <string>

namespace roundlay::sheets {

enum class TagFace {
    end_grain, ///< of the datum end, which shows when the log is up: its tail's
    inside, ///< the inside face at the datum end: its end comes against a frame, a wall or a step, or is too
            ///< small for the tag
    top,    ///< of a floor's timber, at its datum end: both its ends lie in pockets, and it has no outside
    showing ///< of new wood: some face of it lies in the log that it mends
};

/// `width` and `height` of the tag, mm.
TagFace tag_face(const Piece &piece, double width, double height);

/// "Staple to the end grain of its datum end". A partition has no inside: its face by the quarter of the sky.
std::string staple_words(const Layout &layout, const Piece &piece, TagFace face, const Words &words);

/// What the side of the log is called that lies to the right, seen at its datum end: "outside"; of a
/// partition the quarter of the sky.
std::string right_words(const Layout &layout, const Piece &piece, const Words &words);

} // namespace roundlay::sheets
