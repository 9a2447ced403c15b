#include "kernel/trade/joist.h"

namespace roundlay {

double section_modulus(double width, double height) {
    return width * height * height / 6;
}

double section_inertia(double width, double height) {
    return section_modulus(width, height) * height / 2;
}

double shear_stress(double shear, double width, double height) {
    return 3 * shear / (2 * width * height);
}

double notched_shear_stress(double shear, double width, double height, double left) {
    const double part = height / left;
    return shear_stress(shear, width, left) * part * part;
}

double bearing_stress(double force, double width, double bearing_length) {
    return force / (width * bearing_length);
}

NotchLimits notch_limits(double height) {
    return {height / 6, height / 3, height / 4};
}

} // namespace roundlay
