// What a piece weighs, as a range with its reasons.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/measure/weights.h"
#include "kernel/shell/shell.h"
#include "kernel/trade/species.h"

#include <string>
#include <string_view>

namespace roundlay {

/// Printed wherever a weight is shown.
inline constexpr std::string_view weight_caution =
    "Weights are estimates from average values of the species, no lift plan: single logs are heavier or "
    "lighter, and rain and snow add. Weigh before lifting near a limit; local rules and a licensed "
    "professional decide.";

struct WeightEstimate {
    double low_kg = 0, high_kg = 0; ///< as worked out, not rounded; to be shown rounded up
    bool known = false;             ///< false = the species is unknown and both are 0
    Said basis;                     ///< one sentence: formula, inputs, source, how far to trust them
};

/// Kilograms per cubic metre, low and high, with the reasons; weights are this times the volume.
/// Green: from heartwood to sapwood, or from the driest boards published. Where no green moisture is
/// published, from fibre saturation to all hollows full of water. To all of it one coefficient of variation
/// to either side.
WeightEstimate weigh(double volume_mm3, const Wood &wood);

} // namespace roundlay
