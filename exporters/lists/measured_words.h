// Single cuts in words. Each height, depth and width is from a face of the log that is there when it is
// marked.
#pragma once

#include "exporters/words/voice.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <string>

namespace roundlay {

/// "200 mm"; at a slant "350 mm (outside) / 150 mm (inside)".
std::string place_words(const SawLine &place, const Voice &voice);

/// How far an end is sawn at a slant, off the blank's own; empty where it is square
/// within what is printed.
std::string slant_words(const HewnFaces &faces, End end, const Voice &voice);

bool is_long(LogFace face);

/// What a long face of the blank loses, while it is there to measure from; empty where that is less than is
/// printed.
std::string face_words(const Piece &piece, const FaceCut &cut, const Voice &voice);

std::string box_words(const HewnFaces &faces, const BoxCut &cut, const Voice &voice);

/// Where other wood comes in its place, or that it is lapped with.
std::string mend_words(const HewnFaces &faces, const MendCut &cut, const Voice &voice);

/// A timber has no outside: seen from its datum end, its outside face is the right one.
std::string pocket_words(const Piece &piece, const HewnFaces &faces, const PocketCut &cut,
                         const Voice &voice);

std::string stick_words(const RoundCut &cut, const Voice &voice);
std::string scope_words(const HewnFaces &faces, const ScopeCut &cut, const Voice &voice);

} // namespace roundlay
