#include "kernel/measured/tail_plane.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

std::optional<TailPlane> tail_plane(const std::array<std::optional<double>, 4> &heights, double along,
                                    double across) {
    if (std::ranges::count_if(heights, [](const auto &h) { return h.has_value(); }) < 3) return {};
    std::array<double, 4> h{};
    for (std::size_t i = 0; i < h.size(); ++i) // the fourth corner of a parallelogram in the plane of three
        h[i] = heights[i] ? *heights[i] : *heights[i ^ 1U] + *heights[i ^ 2U] - *heights[i ^ 3U];
    TailPlane plane;
    plane.middle = (h[0] + h[1] + h[2] + h[3]) / 4;
    plane.along = (h[2] + h[3] - h[0] - h[1]) / 4 / along;
    plane.across = (h[1] + h[3] - h[0] - h[2]) / 4 / across;
    plane.off = std::abs(h[0] - h[1] - h[2] + h[3]) / 4;
    return plane;
}

} // namespace roundlay
