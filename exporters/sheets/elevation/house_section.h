// The whole house cut through, with its floors.
#pragma once

#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

/// Once across the first wall and once across the next, each where that wall's own first section is, seen
/// toward its left end: all that is cut and all that is seen behind it, heights of floors and of the walls
/// that are cut, and how far those walls stand apart. Of a layout that has walls.
Subject house_section_subject();

} // namespace roundlay::sheets
