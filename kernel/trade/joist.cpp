#include "kernel/trade/joist.h"

#include <cmath>
#include <numbers>

namespace roundlay {

using std::numbers::pi;

JoistSection rectangular(double width, double height) {
    const double area = width * height;
    return {area, area * height / 6, area * height * height / 12, area * 5 / 6, 3.0 / 2};
}

JoistSection round_section(double diameter) {
    const double d2 = diameter * diameter;
    return {pi / 4 * d2, pi / 32 * d2 * diameter, pi / 64 * d2 * d2, pi * 9 / 40 * d2, 4.0 / 3};
}

double moment(const JoistLoad &load) {
    return load.per_length * load.span * load.span / 8;
}

double shear(const JoistLoad &load) {
    return load.per_length * load.span / 2;
}

double bending_stress(const JoistLoad &load, const JoistSection &section) {
    return moment(load) / section.modulus;
}

double shear_stress(const JoistLoad &load, const JoistSection &section) {
    return section.shear_factor * shear(load) / section.area;
}

double bearing_stress(const JoistLoad &load, double width, double bearing_length) {
    return shear(load) / (width * bearing_length);
}

double deflection_by_bending(const JoistLoad &load, const JoistSection &section, double elasticity) {
    return 5 * load.per_length * std::pow(load.span, 4) / (384 * elasticity * section.inertia);
}

double deflection_by_shear(const JoistLoad &load, const JoistSection &section, double shear_modulus) {
    return load.per_length * load.span * load.span / (8 * shear_modulus * section.shear_area);
}

double span_by_bending(double per_length, const JoistSection &section, double stress) {
    return std::sqrt(8 * stress * section.modulus / per_length);
}

double span_by_deflection(double per_length, const JoistSection &section, double elasticity, double part) {
    return std::cbrt(384 * elasticity * section.inertia / (5 * per_length * part));
}

} // namespace roundlay
