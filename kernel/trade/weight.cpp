#include "kernel/trade/weight.h"

#include "kernel/measure/said_number.h"
#include "kernel/trade/wood_physics.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr double mm3_per_m3 = 1e9;

/// Coefficient of variation of specific gravity within a species: Wood Handbook, chapter 5, table of
/// average coefficients of variation (from memory).
constexpr double spread_of_gravity = 0.10;

struct Range {
    double low = 0, high = 0; ///< kg/m3
    Said reason;
};

Said number(double value) {
    constexpr int figures = 3;
    return in_figures(value, figures);
}

Said gravity_origin(const Species &species) {
    const SpecificGravity &gravity = species.gravity;
    Said origin = said_of(gravity.origin);
    if (gravity.heavier() <= gravity.green) return origin;
    return said("%1; the higher weight is by %2, the heavier of them", origin, number(gravity.heavier()));
}

/// The heaviest wood of that kind with every hollow full of water: more than that none can weigh.
double heaviest_there_is(const Species &species) {
    const double gravity = species.gravity.heavier() * (1 + spread_of_gravity);
    return density(gravity, most_moisture(gravity));
}

Range between(const Species &species, double low, double high, Said reason) {
    const double least = density(species.gravity.green, low) * (1 - spread_of_gravity),
                 most = density(species.gravity.heavier(), high) * (1 + spread_of_gravity),
                 there_is = heaviest_there_is(species);
    if (most <= there_is) return {least, most, std::move(reason)};
    return {least, there_is,
            said("%1, and no more than wood of the higher specific gravity weighs with all hollows full of "
                 "water (Eq. 4-3)",
                 std::move(reason))};
}

Range green_range(const Species &species) {
    const double full = most_moisture(species.gravity.green);
    if (!species.moisture)
        return between(species, fibre_saturation, full,
                       said("no green moisture is published for it, so from fibre saturation at 30 % to all "
                            "hollows full of water at %1 % (Eq. 4-3)",
                            number(full)));
    const GreenMoisture &moisture = *species.moisture;
    const Said origin = said_of(moisture.origin);
    if (!moisture.sap)
        return between(species, moisture.heart, std::max(moisture.heart, full),
                       said("from heartwood at %1 % (%2) to all hollows full of water at %3 % (Eq. 4-3), as "
                            "none is published for sapwood",
                            number(moisture.heart), origin, number(full)));
    const auto [low, high] = std::minmax(moisture.heart, *moisture.sap);
    if (moisture.least)
        return between(species, *moisture.least, high,
                       said("from boards measured at %1 % (%2) to sapwood at %3 % by %4",
                            number(*moisture.least), std::string(moisture.least_source), number(high),
                            origin));
    return between(species, low, high,
                   said("from heartwood at %1 % to sapwood at %2 % by %3", number(moisture.heart),
                        number(*moisture.sap), origin));
}

Range stated_range(const Species &species, double moisture) {
    return {density_at(species.gravity.green, moisture) * (1 - spread_of_gravity),
            density_at(species.gravity.heavier(), moisture) * (1 + spread_of_gravity),
            said("at the stated moisture of %1 %, at which that is %2 (Eq. 4-13)", number(moisture),
                 number(specific_gravity_at(species.gravity.green, moisture)))};
}

} // namespace

WeightEstimate weigh(double volume_mm3, const Wood &wood) {
    const auto found = find_species(species_of(wood));
    if (const auto *unknown = std::get_if<UnknownSpecies>(&found))
        return {0, 0, false,
                said("no values are known for the species \"%1\"; %2", species_of(wood),
                     which_species(*unknown))};
    const Species &species = *std::get<const Species *>(found);
    const Range range = wood.moisture ? stated_range(species, *wood.moisture) : green_range(species);
    const double m3 = volume_mm3 / mm3_per_m3;
    const Said name = phrase(species.name);
    const Said basis =
        said("%1: volume x 1000 kg/m3 x specific gravity x (1 + moisture/100), Wood Handbook (second-hand) "
             "Eq. 4-13 and 4-14; specific gravity %2 from %3; %4, 10 % to either side (coefficient of "
             "variation of specific gravity, Wood Handbook chapter 5, from memory); the moisture of single "
             "logs varies more.",
             wood.moisture ? name : said("%1, green", name), number(species.gravity.green),
             gravity_origin(species), range.reason);
    return {m3 * range.low, m3 * range.high, true,
            wood.species.empty() ? said("%1 No species is stated: eastern hemlock is taken.", basis) : basis};
}

} // namespace roundlay
