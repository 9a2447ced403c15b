#include "kernel/measured/line.h"

#include <algorithm>

namespace roundlay {

std::optional<Line> nearest_line(const std::vector<std::pair<double, double>> &points, double least_apart) {
    if (points.empty()) return {};
    double x = 0, v = 0;
    for (const auto &[place, value] : points)
        x += place, v += value;
    const auto count = static_cast<double>(points.size());
    Line line{x / count, v / count, 0};
    const auto [low, high] = std::ranges::minmax_element(points);
    if (high->first - low->first < least_apart) return line;
    double up = 0, across = 0;
    for (const auto &[place, value] : points) {
        up += (place - line.x) * (value - line.from);
        across += (place - line.x) * (place - line.x);
    }
    line.slope = up / across;
    return line;
}

} // namespace roundlay
