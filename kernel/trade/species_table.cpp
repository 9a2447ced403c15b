// Shrinkage: Wood Handbook Table 4-3. Green moisture: Table 4-1. Specific gravity and bending: Table 5-3a.
// The marks say, group by group, how the figures came to us. Conflicts between sources are kept.
#include "kernel/trade/species.h"

#include <array>

namespace roundlay {

namespace {

constexpr std::string_view t43_2010 = "USDA FPL Wood Handbook, FPL-GTR-190 (2010), Table 4-3";
constexpr std::string_view t43_2021 = "USDA FPL Wood Handbook, FPL-GTR-282 (2021), Table 4-3";
constexpr std::string_view t41_2010 = "USDA FPL Wood Handbook, FPL-GTR-190 (2010), Table 4-1";
constexpr std::string_view t41_2021 = "USDA FPL Wood Handbook, FPL-GTR-282 (2021), Table 4-1";
constexpr std::string_view t53_2010 = "USDA FPL Wood Handbook, FPL-GTR-190 (2010), Table 5-3a";
constexpr std::string_view t53_2021 = "USDA FPL Wood Handbook, FPL-GTR-282 (2021), Table 5-3a";

constexpr Origin seen(std::string_view source, std::string_view conflict = {}) {
    return {Mark::seen, source, conflict};
}
constexpr Origin second_hand(std::string_view source, std::string_view conflict = {}) {
    return {Mark::second_hand, source, conflict};
}
constexpr Origin memory(std::string_view source, std::string_view conflict = {}) {
    return {Mark::memory, source, conflict};
}

constexpr std::string_view white_spruce_shrinkage =
    "older US tables give 4.7, 8.2 and 13.7 %, Canadian ones about 3.2, 6.9 and 11.3 %";
constexpr std::string_view white_or_sitka = "some tables give white spruce 0.37 and 0.40 and Sitka spruce "
                                            "0.33 and 0.36: the two rows may be exchanged";
constexpr std::string_view eastern_spruces =
    "older editions give 34 and 128 % for the eastern spruces together";
constexpr std::string_view hemlock_gravity = "a clear-wood table of the ASTM D2555 kind gives 0.39 green";
constexpr std::string_view larch_sap = "some older tables give 110 % for sapwood";
constexpr std::string_view oak_tangential =
    "an unsourced table gives 10.8 % tangential, which is the chestnut oak's figure";

constexpr std::array<Species, 17> table = {{
    {"white spruce",
     {4.7, 8.2, 13.7, memory(t43_2010, white_spruce_shrinkage)},
     {0.33, 0.36, memory(t53_2010, white_or_sitka), 0.37},
     std::nullopt,
     {34, 65, 7900, 9900, memory(t53_2010, white_or_sitka)}},
    {"Engelmann spruce",
     {3.8, 7.1, 11.0, second_hand(t43_2021)},
     {0.33, 0.35, second_hand(t53_2021)},
     GreenMoisture{51, 173, second_hand(t41_2021)},
     {32, 64, 7100, 8900, second_hand(t53_2021)}},
    {"Sitka spruce",
     {4.3, 7.5, 11.5, memory(t43_2010)},
     {0.37, 0.40, memory(t53_2010, white_or_sitka)},
     GreenMoisture{41, 142, memory(t41_2010)},
     {39, 70, 8500, 10800, memory(t53_2010, white_or_sitka)}},
    {"black spruce",
     {4.1, 6.8, 11.3, memory(t43_2010)},
     {0.38, 0.42, memory(t53_2010)},
     GreenMoisture{52, 113, memory(t41_2010, eastern_spruces)},
     {42, 74, 9500, 11100, memory(t53_2010)}},
    {"red spruce",
     {3.8, 7.8, 11.8, memory(t43_2010)},
     {0.37, 0.40, memory(t53_2010)},
     std::nullopt,
     {41, 74, 9200, 11100, memory(t53_2010)}},
    {"eastern hemlock",
     {3.0, 6.8, 9.7, second_hand(t43_2021)},
     {0.38, 0.40, second_hand(t53_2021, hemlock_gravity)},
     GreenMoisture{97, 119, second_hand(t41_2021)},
     {44, 61, 7400, 8300, second_hand(t53_2021)}},
    {"western hemlock",
     {4.2, 7.8, 12.4, second_hand(t43_2021)},
     {0.42, 0.45, second_hand(t53_2021)},
     GreenMoisture{85, 170, second_hand(t41_2021), 31.4, "USDA PNW-RN-530, 2003, seen"},
     {46, 78, 9000, 11300, second_hand(t53_2021)}},
    {"Douglas-fir (coast)",
     {4.8, 7.6, 12.4, seen(t43_2010)},
     {0.45, 0.48, second_hand(t53_2021)},
     GreenMoisture{37, 115, seen(t41_2010)},
     {53, 85, 10800, 13400, second_hand(t53_2021)}},
    {"lodgepole pine",
     {4.3, 6.7, 11.1, second_hand(t43_2021)},
     {0.38, 0.41, second_hand(t53_2021)},
     GreenMoisture{41, 120, second_hand(t41_2021)},
     {38, 65, 7400, 9200, second_hand(t53_2021)}},
    {"eastern white pine",
     {2.1, 6.1, 8.2, memory(t43_2010)},
     {0.34, 0.35, memory(t53_2010)},
     std::nullopt,
     {34, 59, 6800, 8500, memory(t53_2010)}},
    {"ponderosa pine",
     {3.9, 6.2, 9.7, memory(t43_2010)},
     {0.38, 0.40, seen(t53_2010)},
     GreenMoisture{40, 148, memory(t41_2010)},
     {35, 65, 6900, 8900, seen(t53_2010)}},
    {"western redcedar",
     {2.4, 5.0, 6.8, seen(t43_2010)},
     {0.31, 0.32, memory(t53_2010)},
     GreenMoisture{58, 249, seen(t41_2010)},
     {35.9, 51.7, 6500, 7700, memory(t53_2010)}},
    {"western larch",
     {4.5, 9.1, 14.0, second_hand(t43_2021)},
     {0.48, 0.52, second_hand(t53_2021)},
     GreenMoisture{54, 119, second_hand(t41_2021, larch_sap)},
     {53, 90, 10100, 12900, second_hand(t53_2021)}},
    {"tamarack",
     {3.7, 7.4, 13.6, memory(t43_2010)},
     {0.49, 0.53, memory(t53_2010)},
     GreenMoisture{49, std::nullopt, memory(t41_2010)},
     {50, 80, 8500, 11300, memory(t53_2010)}},
    {"subalpine fir",
     {2.6, 7.4, 9.4, seen(t43_2010)},
     {0.31, 0.32, second_hand(t53_2021)},
     std::nullopt,
     {34, 59, 7200, 8900, second_hand(t53_2021)}},
    {"white oak",
     {5.6, 10.5, 16.3, seen(t43_2010, oak_tangential)},
     {0.60, 0.68, second_hand(t53_2021)},
     GreenMoisture{64, 78, second_hand(t41_2021)},
     {57, 105, 8600, 12300, second_hand(t53_2021)}},
    {"American chestnut",
     {3.4, 6.7, 11.6, seen(t43_2010)},
     {0.40, 0.43, memory(t53_2010)},
     GreenMoisture{120, std::nullopt, memory(t41_2010)},
     {39, 59, 6400, 8500, memory(t53_2010)}},
}};

} // namespace

std::span<const Species> all_species() {
    return table;
}

} // namespace roundlay
