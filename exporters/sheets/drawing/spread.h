// Keeps labels in a row apart from one another, each as near to its wanted place as can be.
#pragma once

#include <vector>

namespace roundlay::sheets {

/// `wanted` ascending. The result is in the same order, neighbours at least `pitch` apart, and the sum of
/// the squared shifts is the least possible.
std::vector<double> spread(const std::vector<double> &wanted, double pitch);

/// The same, all within [low, high] as far as they fit there.
std::vector<double> spread(const std::vector<double> &wanted, double pitch, double low, double high);

} // namespace roundlay::sheets
