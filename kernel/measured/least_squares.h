// The numbers for which what is off comes to the least, squared and added up.
#pragma once

#include <functional>
#include <vector>

namespace roundlay {

/// How far each of the observations is off for these numbers, each in units of how exact it is.
using Off = std::function<std::vector<double>(const std::vector<double> &numbers)>;

/// From `start` on, by Gauss and Newton with slopes taken numerically (step in the numbers' own unit). Smooth
/// functions, as many observations as numbers at least, all numbers held by some of them.
std::vector<double> least_squares(std::vector<double> start, const Off &off, double step);

} // namespace roundlay
