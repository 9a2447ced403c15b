// Changes of floors that are offered, as functions from shell to shell.
#pragma once

#include "kernel/design/fitted.h"

#include <functional>
#include <optional>

namespace roundlay {

/// Floors over one another keep so much between their tops, mm, or nobody stands between them. Common
/// practice, no source.
double least_between_floors(UnitSystem units);

/// With one more floor: the shortest way between two walls that face each other, as high as the layout takes
/// it below the plate logs, and so far over or under every floor that lies there that a person stands between
/// them. Where there is no such height, what layout has against any floor of that shell, or that only the
/// height between floors is missing.
Fitted with_fitting_floor(const Shell &shell);

/// With one more beam, as near to the middle of that floor as it fits, or one more opening at its left,
/// smaller where a stair has no room. Where it does not fit, what is against it.
Fitted with_fitting_beam(const Shell &shell, std::size_t floor);
Fitted with_fitting_floor_opening(const Shell &shell, std::size_t floor, const std::string &called = "stair");

/// With that floor changed; nothing where there is none.
std::optional<Shell> with_floor(const Shell &shell, std::size_t floor,
                                const std::function<void(Floor &)> &change);

std::optional<Shell> without_floor(const Shell &shell, std::size_t floor);

} // namespace roundlay
