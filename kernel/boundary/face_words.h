// Names of faces: the mark of the cut that made each as it stands on the piece's sheet, what it is of that
// cut, and for whom.
#pragma once

#include "kernel/boundary/made_by.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

/// The names of one piece's faces: "top", "2 seam AB", "2 shoulder AB", "5 sill D1", "K1 bed L-J04", "P3".
/// English, as all of a STEP file. Of a solid that stands for several pieces (not `alone`), which meet
/// others, without corners and tags: "2 seam". The piece outlives it.
class FaceNames {
  public:
    FaceNames(const Piece &piece, bool alone);
    std::string name(const MadeBy &made) const;
    const std::vector<std::string> &marks() const { return marks_; } ///< cut_marks
    bool alone() const { return alone_; }

  private:
    const Piece &piece_;
    std::vector<std::string> marks_;
    bool alone_;
};

/// One for each of Boundary::faces.
std::vector<std::string> face_names(const Piece &piece, const Boundary &border, bool alone);

/// The same of faces of a solid that has no border in doubles; empty for one that was not made out.
std::vector<std::string> face_names(const Piece &piece, const std::vector<std::optional<FaceSeen>> &faces,
                                    bool alone);

} // namespace roundlay
