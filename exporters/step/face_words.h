// Names of faces: the mark of the cut that made each as it stands on the piece's sheet, what it is of that
// cut, and for whom.
#pragma once

#include "kernel/boundary/boundary.h"

#include <string>
#include <vector>

namespace roundlay::step {

/// One for each of Boundary::faces: "top", "2 seam AB", "2 shoulder AB", "5 sill D1", "K1 bed L-J04", "P3".
/// English, as all of a STEP file. Of a solid that stands for several pieces, which meet others, without
/// corners and tags: "2 seam".
std::vector<std::string> face_names(const Piece &piece, const Boundary &border, bool alone);

} // namespace roundlay::step
