// Of taking down and raising.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 pieces, one on the other", "%1 pièces, l’une sur l’autre"},
    {"%1 pieces, the last raised first", "%1 pièces, la dernière levée en premier"},
    {"Before you begin", "Avant de commencer"},
    {"Down", "Descendue"},
    {"Free after", "Libre après"},
    {"Geometry alone: what lies free to rise. Whether a wall, a corner or a roof stands meanwhile, what is "
     "braced, and with what is lifted, is for a licensed professional and whoever is on the site.",
     "La géométrie seule : ce qui est libre de monter. Si un mur, un angle ou un toit tient pendant ce "
     "temps, "
     "ce "
     "qu’il faut étayer et avec quoi l’on lève, c’est à un professionnel agréé et à qui est sur place d’en "
     "décider."},
    {"Laid on", "Posée sur"},
    {"Order", "Ordre"},
    {"Pegged", "Chevillée"},
    {"Raise in this order, and tick off", "Lever dans cet ordre, et cocher"},
    {"Raising", "Levage de la coque"},
    {"Take down in this order: the last that was raised comes first",
     "Démonter dans cet ordre : la dernière levée vient en premier"},
    {"Taking down", "Démontage"},
    {"The order is geometry alone: what lies free to rise. Whether a wall, a corner or a roof stands "
     "meanwhile, what is braced, and with what is lifted, is for a licensed professional and whoever is on "
     "the site.",
     "L’ordre est la géométrie seule : ce qui est libre de monter. Si un mur, un angle ou un toit tient "
     "pendant "
     "ce temps, ce qu’il faut étayer et avec quoi l’on lève, c’est à un professionnel agréé et à qui est sur "
     "place d’en décider."},
    {"Then held by its pegs alone", "Ne tient alors que par ses chevilles"},
    {"Up", "Levée"},
    {"free after", "libre après"},
    {"kg from", "kg de"},
    {"laid on", "posée sur"},
    {"lb from", "lb de"},
    {"no.", "n°"},
    {"taking down and raising, piece by piece, to be ticked off",
     "démontage et levage, pièce par pièce, à cocher"},
    {"then held by pegs alone", "ne tient alors que par ses chevilles"},
};

} // namespace

std::span<const Entry> french_of_raising() {
    return entries;
}

} // namespace roundlay
