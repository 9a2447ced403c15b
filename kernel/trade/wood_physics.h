// Moisture, density and shrinkage of wood by the formulas of the Wood Handbook (USDA Forest
// Products Laboratory, FPL-GTR-282, 2021; second-hand). Moisture is in percent of ovendry mass throughout.
#pragma once

namespace roundlay {

/// Below this wood shrinks; above it more water changes nothing but the weight (GTR-190 p. 4-2, seen).
inline constexpr double fibre_saturation = 30;

/// Eq. 4-9: what a size has lost of its green value at that moisture, in percent. 0 from 30 % upward,
/// `green_to_ovendry` at 0. Negative moisture counts as 0.
double partial_shrinkage(double green_to_ovendry, double moisture);

/// Eq. 4-13: specific gravity on the volume at that moisture, from the one on green volume. From 30 %
/// upward it is the green one.
double specific_gravity_at(double green_gravity, double moisture);

/// Eq. 4-14: kg/m3. `gravity` must be on the volume at the same moisture.
double density(double gravity, double moisture);

/// kg/m3 at that moisture, from the specific gravity on green volume: Eq. 4-13 and 4-14 together.
double density_at(double green_gravity, double moisture);

/// Eq. 4-3: the most water wood can hold, every hollow filled.
double most_moisture(double green_gravity);

} // namespace roundlay
