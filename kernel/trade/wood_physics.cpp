#include "kernel/trade/wood_physics.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double water = 1000;               // kg/m3
constexpr double cell_wall = 1.54;           // specific gravity of wood without hollows, Eq. 4-3
constexpr double volume_per_gravity = 0.265; // Eq. 4-12: volumetric shrinkage is 26.5 % per unit of gravity

/// How dry, from 0 at fibre saturation and above to 1 ovendry.
double dryness(double moisture) {
    return 1 - std::clamp(moisture, 0.0, fibre_saturation) / fibre_saturation;
}

} // namespace

double partial_shrinkage(double green_to_ovendry, double moisture) {
    return green_to_ovendry * dryness(moisture);
}

double specific_gravity_at(double green_gravity, double moisture) {
    return green_gravity / (1 - volume_per_gravity * green_gravity * dryness(moisture));
}

double density(double gravity, double moisture) {
    return water * gravity * (1 + moisture / 100);
}

double density_at(double green_gravity, double moisture) {
    return density(specific_gravity_at(green_gravity, moisture), moisture);
}

double most_moisture(double green_gravity) {
    return 100 * (cell_wall - green_gravity) / (cell_wall * green_gravity);
}

double equilibrium_moisture(double celsius, double humidity) {
    const double t = celsius;
    const double w = 349 + 1.29 * t + 0.0135 * t * t;
    const double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    const double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
    const double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
    const double kh = k * humidity;
    const double hydrated = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
    return 1800 / w * (kh / (1 - kh) + hydrated);
}

double strength_at(double at_12, double green, double moisture, double intersection) {
    return at_12 * std::pow(at_12 / green, (12 - moisture) / (intersection - 12));
}

} // namespace roundlay
