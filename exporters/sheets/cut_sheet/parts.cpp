#include "exporters/sheets/cut_sheet/parts.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr int looks = 60; ///< places tried on either side of the even one

double clear_place(double even, double reach, const std::vector<double> &points, double near) {
    const auto clear = [&](double x) {
        return std::none_of(points.begin(), points.end(), [&](double p) { return std::abs(p - x) < near; });
    };
    for (int i = 0; i <= looks; ++i)
        for (const double x : {even - reach * i / looks, even + reach * i / looks})
            if (clear(x)) return x;
    return even;
}

} // namespace

std::vector<Shown> divided(double length, int count, const std::vector<double> &points, double near) {
    std::vector<Shown> parts;
    double from = 0;
    for (int i = 1; i <= count; ++i) {
        const double even = length * i / count;
        const double to = i == count ? length : clear_place(even, 0.4 * length / count, points, near);
        parts.push_back({from, to});
        from = to;
    }
    return parts;
}

} // namespace roundlay::sheets
