// Wall elevations: every log with its tag, openings, heights of the rounds; from outside and from inside.
#pragma once

#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

/// Both elevations of one of Layout::walls, on as few sheets as they take.
Subject wall_subject(const Layout &layout, Index<WallPlace> wall);

} // namespace roundlay::sheets
