#include "kernel/trade/weight.h"

#include "kernel/trade/wood_physics.h"

#include <algorithm>
#include <charconv>

namespace roundlay {

namespace {

constexpr double mm3_per_m3 = 1e9;

/// Coefficient of variation of specific gravity within a species: Wood Handbook, chapter 5, table of
/// average coefficients of variation (from memory).
constexpr double spread_of_gravity = 0.10;

struct Range {
    double low = 0, high = 0; ///< kg/m3
    std::string reason;
};

std::string number(double value) {
    char digits[32];
    const auto end = std::to_chars(digits, digits + sizeof digits, value, std::chars_format::general, 3);
    return {digits, end.ptr};
}

std::string quoted(const Origin &origin) {
    std::string text = std::string(origin.source) + " (" + std::string(words(origin.mark)) + ")";
    if (!origin.conflict.empty()) text += ", though " + std::string(origin.conflict);
    return text;
}

constexpr const char *spread_words =
    "10 % to either side (coefficient of variation of specific gravity, Wood Handbook "
    "chapter 5, from memory); the moisture of single logs varies more";

std::string gravity_words(const Species &species) {
    const SpecificGravity &gravity = species.gravity;
    return "specific gravity " + number(gravity.green) + " from " + quoted(gravity.origin) +
           (gravity.heavier() > gravity.green
                ? "; the higher weight is by " + number(gravity.heavier()) + ", the heavier of them"
                : "");
}

Range between(const Species &species, double low, double high, std::string reason) {
    return {density(species.gravity.green, low) * (1 - spread_of_gravity),
            density(species.gravity.heavier(), high) * (1 + spread_of_gravity),
            std::move(reason) + ", " + spread_words};
}

Range green_range(const Species &species) {
    const double full = most_moisture(species.gravity.green);
    if (!species.moisture)
        return between(
            species, fibre_saturation, full,
            "no green moisture is published for it, so from fibre saturation at 30 % to all hollows "
            "full of water at " +
                number(full) + " % (Eq. 4-3)");
    const GreenMoisture &moisture = *species.moisture;
    const std::string heart = "heartwood at " + number(moisture.heart) + " %";
    if (!moisture.sap)
        return between(species, moisture.heart, std::max(moisture.heart, full),
                       "from " + heart + " (" + quoted(moisture.origin) +
                           ") to all hollows full of water at " + number(full) +
                           " % (Eq. 4-3), as none is published for sapwood");
    const auto [low, high] = std::minmax(moisture.heart, *moisture.sap);
    if (moisture.least)
        return between(species, *moisture.least, high,
                       "from boards measured at " + number(*moisture.least) + " % (" +
                           std::string(moisture.least_source) + ") to sapwood at " + number(high) + " % by " +
                           quoted(moisture.origin));
    return between(species, low, high,
                   "from " + heart + " to sapwood at " + number(*moisture.sap) + " % by " +
                       quoted(moisture.origin));
}

Range stated_range(const Species &species, double moisture) {
    return {density_at(species.gravity.green, moisture) * (1 - spread_of_gravity),
            density_at(species.gravity.heavier(), moisture) * (1 + spread_of_gravity),
            "at the stated moisture of " + number(moisture) + " %, " + spread_words};
}

} // namespace

WeightEstimate weigh(double volume_mm3, const Wood &wood) {
    const auto found = find_species(species_of(wood));
    if (const auto *unknown = std::get_if<UnknownSpecies>(&found)) return {0, 0, false, unknown->message};
    const Species &species = *std::get<const Species *>(found);
    const Range range = wood.moisture ? stated_range(species, *wood.moisture) : green_range(species);
    const double m3 = volume_mm3 / mm3_per_m3;
    const std::string name(species.name);
    const std::string state = wood.moisture ? name : name + ", green";
    return {m3 * range.low, m3 * range.high, true,
            state +
                ": volume x 1000 kg/m3 x specific gravity x (1 + moisture/100), Wood Handbook (second-hand) "
                "Eq. 4-13 and "
                "4-14; " +
                gravity_words(species) + "; " + range.reason + "." +
                (wood.species.empty() ? " No species is stated: eastern hemlock is taken." : "")};
}

} // namespace roundlay
