// Species of wood, and settling rules by their names.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"13 mm in 300 mm", "13 mm pour 300 mm"},
    {"3/16 in per log", "3/16 po par pièce"},
    {"4 percent", "4 pour cent"},
    {"6 percent", "6 pour cent"},
    {"American chestnut", "châtaignier d’Amérique"},
    {"Douglas-fir (coast)", "douglas (côte)"},
    {"Engelmann spruce", "épinette d’Engelmann"},
    {"Sitka spruce", "épinette de Sitka"},
    {"black spruce", "épinette noire"},
    {"eastern hemlock", "pruche du Canada"},
    {"eastern white pine", "pin blanc"},
    {"lodgepole pine", "pin tordu"},
    {"ponderosa pine", "pin ponderosa"},
    {"red spruce", "épinette rouge"},
    {"subalpine fir", "sapin subalpin"},
    {"tamarack", "mélèze laricin"},
    {"western hemlock", "pruche de l’Ouest"},
    {"western larch", "mélèze de l’Ouest"},
    {"western redcedar", "thuya géant"},
    {"white oak", "chêne blanc"},
    {"white spruce", "épinette blanche"},
};

} // namespace

std::span<const Entry> french_of_woods() {
    return entries;
}

} // namespace roundlay
