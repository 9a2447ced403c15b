// Loads spread over a floor: kilopascals, or pounds on a square foot.
#pragma once

#include "kernel/measure/measure.h"

#include <optional>
#include <string>
#include <string_view>

namespace roundlay {

/// By definition of the pound (0.45359237 kg), of standard gravity (9.80665 m/s2) and of the foot (0.3048 m).
inline constexpr double newtons_per_kilogram = 9.80665;
inline constexpr double newtons_per_pound = 0.45359237 * newtons_per_kilogram;
inline constexpr double kpa_per_psf = newtons_per_pound / (0.3048 * 0.3048) / 1000;
inline constexpr double mpa_per_psi = newtons_per_pound / (25.4 * 25.4);
inline constexpr double n_per_mm_per_plf = newtons_per_pound / 304.8; ///< N/mm in a pound on a foot of length

/// `40 psf`, `40 lb/ft2`, `1.9 kPa`, `1.9 kN/m2`: kilopascals. A number without a unit only where `bare` says
/// which is meant.
std::optional<double> parse_load(std::string_view text, std::optional<UnitSystem> bare = {});

inline constexpr double most_load = 50; ///< kPa on a floor

/// A number over this is hardly meant in kPa, as no room of a house bears it, nor a lesser one in psf: it
/// must have its unit.
inline constexpr double most_bare_load = 10;

/// What a load without its unit can be stated as: `"40 psf" or "40 kPa"`, as far as a floor is asked to bear
/// it; empty: neither.
std::string with_unit_stated(double number);

/// For reading, four figures: `40 psf`, `1.9 kPa`.
std::string print_load(double kpa, UnitSystem system);

/// Reads back to the very same load: in the chosen system's unit, or in the other one where that is much
/// shorter.
std::string spell_load(double kpa, UnitSystem system);

} // namespace roundlay
