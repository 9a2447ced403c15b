// Sections: each wall cut through upright, across its logs.
#pragma once

#include "exporters/sheets/set/subject.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Where a wall is cut through, seen toward its left end.
struct SectionPlace {
    std::string name;                   ///< "A1"
    double x = 0;                       ///< from the wall's left outside corner, clear of pegs
    std::optional<std::size_t> opening; ///< of Shell::openings; none: through the wall beside its openings
};

/// One beside the openings, and one through each opening that is not like one before it.
std::vector<SectionPlace> section_places(const Shell &shell, const Layout &layout, Index<WallPlace> wall);

/// All sections of all walls, to one scale.
Subject section_subject();

} // namespace roundlay::sheets
