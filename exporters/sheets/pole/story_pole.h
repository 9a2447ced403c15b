// Story poles: for each corner, at what height every seam lies and every log ends.
#pragma once

#include "exporters/sheets/set/subject.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// A height over the foundation worth a line on the pole.
struct PoleMark {
    double z = 0;
    bool seam = true;  ///< else the top of a log
    std::string words; ///< whose
    int line_of = 0;   ///< over 0: neither, but the level line of the logs of that round
};

/// All marks of a corner, ascending. Seams slope: theirs are the heights at the arris where the outside faces
/// of the two walls meet.
std::vector<PoleMark> pole_marks(const Layout &layout, const CornerPlace &corner);

/// Where the level lines of the logs come at the corner, ascending: the log lies right when its line is on
/// the mark.
std::vector<PoleMark> line_marks(const Layout &layout, const CornerPlace &corner, UnitSystem units);

/// All corners side by side, reduced.
Subject pole_subject();

/// 1:1, in strips to be cut out and joined, on A4 or Letter. Corners with the same heights share one pole.
std::vector<Sheet> full_size_poles(const Shell &shell, const Layout &layout, const SheetOptions &options);

} // namespace roundlay::sheets
