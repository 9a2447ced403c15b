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

double huber(double middle_area, double length) {
    return length * middle_area;
}

double newton(double small_area, double middle_area, double large_area, double length) {
    return length * (small_area + 4 * middle_area + large_area) / 6;
}

double cone_frustum(double small_area, double large_area, double length) {
    return length * (small_area + std::sqrt(small_area * large_area) + large_area) / 3;
}

double neiloid_frustum(double small_area, double large_area, double length) {
    const double near_small = std::cbrt(small_area * small_area * large_area);
    const double near_large = std::cbrt(small_area * large_area * large_area);
    return length * (small_area + near_small + near_large + large_area) / 4;
}

double quarter_girth(double girth, double length) {
    return girth / 4 * (girth / 4) * length;
}

double largest_square(double diameter) {
    return diameter / std::numbers::sqrt2;
}

Section strongest_beam(double diameter) {
    return {diameter / std::numbers::sqrt3, diameter * std::numbers::sqrt2 / std::numbers::sqrt3};
}

Section stiffest_beam(double diameter) {
    return {diameter / 2, diameter * std::numbers::sqrt3 / 2};
}

double least_round(double width, double height) {
    return std::hypot(width, height);
}

} // namespace roundlay
