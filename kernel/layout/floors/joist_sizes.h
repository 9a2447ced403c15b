// Whether joists of the stated sizes can lie at the stated spacing in walls of that thickness.
#pragma once

#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <functional>
#include <optional>
#include <string>

namespace roundlay {

/// A trimmer's, and a trimmed joist's, end is as high as this part of the least high joist: the rest is
/// notched away under it. A quarter is the deepest end notch of IRC R502.8.1 (second-hand).
inline constexpr double notched_part = 0.75;

/// Wood or air that is left beside a joist, at least. Common practice, no source.
inline constexpr double least_beside_joist = 25;

/// Takes a finding about a key of the floor; true where the floor can be cut all the same.
using SayOfFloor = std::function<bool(Weight, const std::string &key, Said what, std::optional<Said> advice)>;

/// `thinnest`: mm, of the two walls that the joists lie in. False where the floor cannot be cut.
bool check_joist_sizes(const Shell &shell, const Floor &floor, double thinnest, const SayOfFloor &say_of);

} // namespace roundlay
