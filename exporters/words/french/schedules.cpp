// Schedules on paper, and books of some of the sheets.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1: notes", "%1 : notes"},
    {"A screen of the floors, no approval", "Vérification sommaire des planchers, sans approbation"},
    {"Allowable stresses: %1.", "Contraintes admissibles : %1."},
    {"Length in wood", "Longueur dans le bois"},
    {"Lengths to order: %1.", "Longueurs à commander : %1."},
    {"Openings", "Ouvertures"},
    {"Rods, bolts, wiring and holes as found", "Tirants, boulons, câblage et trous trouvés"},
    {"Schedules", "Nomenclatures"},
    {"Sticks to order", "Bois à commander"},
    {"The length in wood is that of the bore: a rod or bolt is longer, by what is set in the foundation and "
     "by plate, washer and nut.",
     "La longueur dans le bois est celle du perçage : un tirant ou un boulon est plus long, de ce qui est "
     "scellé dans la fondation et de la plaque, de la rondelle et de l’écrou."},
    {"Timbers of the floors", "Pièces des planchers"},
    {"Width and height are of the opening in the logs; from left: from the wall's left corner; sill: over "
     "the foundation. The frame is no higher than what is left for it under the settle space, and no wider "
     "than the opening less what its jambs and keys take. Past left and past right: how far the header log "
     "runs on beyond the opening.",
     "Largeur et hauteur sont celles de l’ouverture dans les pièces ; de la gauche : depuis l’angle gauche "
     "du mur ; allège : au-dessus de la fondation. Le cadre n’est pas plus haut que ce qui lui reste sous le "
     "jeu de tassement, ni plus large que l’ouverture moins ce que prennent ses jambages et ses clés. Passe "
     "à gauche et à droite : de combien la pièce de linteau continue au-delà de l’ouverture."},
    {"openings, pegs, sticks, floors", "ouvertures, chevilles, bois, planchers"},
};

} // namespace

std::span<const Entry> french_of_schedules() {
    return entries;
}

} // namespace roundlay
