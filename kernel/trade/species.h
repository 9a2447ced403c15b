// The wood species that are known, with their published values.
//
// All values are means of clear wood: they describe a species, not a stick, and are no design values.
#pragma once

#include "kernel/trade/origin.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace roundlay {

/// Percent of the green size, from green to ovendry.
struct Shrinkage {
    double radial = 0, tangential = 0, volumetric = 0;
    Origin origin;
};

/// Ovendry mass over volume, water = 1. The two are on different volumes and must not be mixed.
struct SpecificGravity {
    double green = 0; ///< volume when green
    double at_12 = 0; ///< volume at 12 % moisture
    Origin origin;
    double heaviest_green =
        0; ///< where the conflicting source gives more, green; weights' upper end is by it
    double heavier() const { return heaviest_green > green ? heaviest_green : green; }
};

/// Average moisture of green wood, percent of ovendry mass (often over 100).
struct GreenMoisture {
    double heart = 0;
    std::optional<double> sap; ///< not published for every species
    Origin origin;
    std::optional<double> least = std::nullopt; ///< of single green boards, where that was published
    std::string_view least_source = {};
};

/// Clear-wood means in bending, MPa.
struct Bending {
    double rupture_green = 0, rupture_12 = 0;
    double elasticity_green = 0, elasticity_12 = 0;
    Origin origin;
};

struct Species {
    std::string_view name;
    Shrinkage shrinkage;
    SpecificGravity gravity;
    std::optional<GreenMoisture> moisture;
    Bending bending;
};

/// In the order of the table: spruces, hemlocks, and so on.
std::span<const Species> all_species();

struct UnknownSpecies {
    std::string message; ///< one sentence: what was asked for, the nearest known, or all that are known
    std::vector<std::string_view> meant; ///< names that may have been meant; empty: none is near
};

/// The names that may have been meant, or all that are known, as a document has them in every language.
Said which_species(const UnknownSpecies &unknown);

/// By name; capitals, blanks and hyphens do not matter: `Eastern Hemlock`, `douglas-fir coast`.
std::variant<const Species *, UnknownSpecies> find_species(std::string_view name);

} // namespace roundlay
