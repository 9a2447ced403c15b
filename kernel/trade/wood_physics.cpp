#include "kernel/trade/wood_physics.h"

#include <algorithm>

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

} // namespace roundlay
