#include "kernel/trade/log_volume.h"

#include <cmath>
#include <numbers>

namespace roundlay {

double area_of_diameter(double diameter) {
    return std::numbers::pi / 4 * diameter * diameter;
}

double smalian(double small_area, double large_area, double length) {
    return length * (small_area + large_area) / 2;
}

double tapered_log_volume(double small_end, double length) {
    constexpr double taper = 0.5 / 48; // 1/2 in in 4 ft
    return smalian(area_of_diameter(small_end), area_of_diameter(small_end + taper * length), length);
}

double least_round(double width, double height) {
    return std::hypot(width, height);
}

} // namespace roundlay
