// Single cuts in words. Each height, depth and width is from a face of the log that is there when it is
// marked.
#pragma once

#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/measure/measure.h"

#include <string>

namespace roundlay {

std::string said(double mm, const LengthStyle &style);

/// "200 mm"; at a slant "350 mm (outside) / 150 mm (inside)".
std::string place_words(const SawLine &place, const LengthStyle &style);

/// How far an end is sawn at a slant, off the blank's own; empty where it is square.
std::string slant_words(const HewnFaces &faces, End end, const LengthStyle &style);

bool is_long(LogFace face);

/// What a long face of the blank loses, while it is there to measure from.
std::string face_words(const Piece &piece, const FaceCut &cut, const LengthStyle &style);

std::string box_words(const HewnFaces &faces, const BoxCut &cut, const LengthStyle &style);

/// A timber has no outside: seen from its datum end, its outside face is the right one.
std::string pocket_words(const Piece &piece, const HewnFaces &faces, const PocketCut &cut,
                         const LengthStyle &style);

std::string stick_words(const RoundCut &cut, const LengthStyle &style);
std::string scope_words(const HewnFaces &faces, const ScopeCut &cut, const LengthStyle &style);

} // namespace roundlay
