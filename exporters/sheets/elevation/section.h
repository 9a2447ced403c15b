// Sections: each wall cut through upright, across its logs.
#pragma once

#include "exporters/sheets/set/subject.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Where a wall is cut through, seen toward its left end.
struct SectionPlace {
    std::string name; ///< "A1"
    double x = 0;     ///< from the wall's left outside corner, clear of pegs
    int opening = -1; ///< index into Shell::openings; -1 = through the wall beside its openings
};

/// One beside the openings, and one through each opening that is not like one before it.
std::vector<SectionPlace> section_places(const Shell &shell, const Layout &layout, int wall);

/// All sections of all walls, to one scale.
Subject section_subject();

} // namespace roundlay::sheets
