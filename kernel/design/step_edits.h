// Steps of the foundation that are added, changed and taken away.
#pragma once

#include "kernel/design/fitted.h"

#include <string>
#include <vector>

namespace roundlay {

/// Indices into Shell::steps of those under that wall, from left to right.
std::vector<std::size_t> steps_under(const Shell &shell, const std::string &wall);

/// With one more step under that wall, its middle as near to `along` (from the left, mm) as the layout takes
/// it: a round high where that brings no warning, narrower where there is no room. Where none fits, what is
/// against it.
Fitted with_new_step(const Shell &shell, const std::string &wall, double along);

/// With that step as stated there; nothing where there is none.
std::optional<Shell> with_step(const Shell &shell, std::size_t at, const FoundationStep &step);
std::optional<Shell> without_step(const Shell &shell, std::size_t at);

} // namespace roundlay
