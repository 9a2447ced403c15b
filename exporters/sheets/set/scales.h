// The only scales that are drawn to.
#pragma once

#include "exporters/sheets/drawing/words.h"

#include <span>
#include <string>

namespace roundlay::sheets {

struct Scale {
    double ratio = 1;  ///< paper per wood
    const char *words; ///< "1:10", "3/4\" = 1'"
};

/// As it is said on a sheet; null where nothing is drawn to a scale: "none".
std::string said_scale(const Scale *scale, const Words &words);

/// Of single logs, from the largest to the smallest.
std::span<const Scale> scales(UnitSystem system);

/// Of walls, rounds and poles, from the largest to the smallest.
std::span<const Scale> shell_scales(UnitSystem system);

} // namespace roundlay::sheets
