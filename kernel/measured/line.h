// Straight lines along a wall: what a log's height, width or gap is between its two shoulders.
#pragma once

#include <optional>
#include <utility>
#include <vector>

namespace roundlay {

struct Line {
    double x = 0, from = 0; ///< at one place ...
    double slope = 0;       ///< ... and what it rises by from there
    double at(double where) const { return from + slope * (where - x); }
};

inline Line through(double x0, double v0, double x1, double v1) {
    return {x0, v0, (v1 - v0) / (x1 - x0)};
}

/// The one nearest to all of (place, value), by least squares; level where they lie within `least_apart` of
/// one place. Nothing without any.
std::optional<Line> nearest_line(const std::vector<std::pair<double, double>> &points, double least_apart);

} // namespace roundlay
