// Schedules on paper, and books of some of the sheets.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {" Crossed: a door's gap in the sill logs.", " Barré : le passage d’une porte dans les pièces de seuil."},
    {" Heights over the foundation.", " Hauteurs au-dessus de la fondation."},
    {" Outside, jambs are from the circle at the wall's left corner; inside are clear lengths between the "
     "walls.",
     " Hors des murs, les jambages sont depuis le cercle à l’angle gauche du mur ; dedans, les longueurs "
     "libres entre les murs."},
    {"%1 from the left of wall %2, seen toward its left end",
     "à %1 de la gauche du mur %2, vu vers son bout gauche"},
    {"%1, estimated: no lift plan.", "%1, estimé : pas un plan de levage."},
    {"%1: notes", "%1 : notes"},
    {"A screen of the floors, no approval", "Vérification sommaire des planchers, sans approbation"},
    {"Allowable stresses: %1.", "Contraintes admissibles : %1."},
    {"Angle", "Angle"},
    {"Code", "Code"},
    {"Code %1, as on its tag.", "Code %1, comme sur son repère."},
    {"Corners that are not square, measured inside", "Angles qui ne sont pas droits, mesurés à l’intérieur"},
    {"Diagonal", "Diagonale"},
    {"Diagonals over outside corners, to check the plan",
     "Diagonales entre angles extérieurs, pour vérifier le plan"},
    {"Door", "Porte"},
    {"Door gaps in the sill logs", "Passages de portes dans les pièces de seuil"},
    {"Gap", "Passage"},
    {"Length %1, raise %2", "Longueur %1, levage %2"},
    {"Length in wood", "Longueur dans le bois"},
    {"Lengths to order: %1.", "Longueurs à commander : %1."},
    {"Lifted with %1.", "Levée avec %1."},
    {"Measures that found no room here", "Cotes qui n’ont pas trouvé place ici"},
    {"Openings", "Ouvertures"},
    {"Rods, bolts, wiring and holes as found", "Tirants, boulons, câblage et trous trouvés"},
    {"Schedules", "Nomenclatures"},
    {"Section %1, through the whole house", "Coupe %1, à travers toute la maison"},
    {"Sections through the whole house", "Coupes à travers toute la maison"},
    {"Staple to a face that shows in the mended log.",
     "À agrafer sur une face visible dans la pièce réparée."},
    {"Staple to its inside face, at its datum end.",
     "À agrafer sur sa face intérieure, à son bout d’origine."},
    {"Staple to its top, at its datum end, clear of the pocket.",
     "À agrafer dessus, à son bout d’origine, hors de la mortaise."},
    {"Staple to the end grain of its datum end.", "À agrafer sur le bois de bout de son bout d’origine."},
    {"Staple to the face that looks %1, at its datum end.",
     "À agrafer sur la face %1, à son bout d’origine."},
    {"Sticks to order", "Bois à commander"},
    {"The length in wood is that of the bore: a rod or bolt is longer, by what is set in the foundation and "
     "by plate, washer and nut.",
     "La longueur dans le bois est celle du perçage : un tirant ou un boulon est plus long, de ce qui est "
     "scellé dans la fondation et de la plaque, de la rondelle et de l’écrou."},
    {"Timbers of the floors", "Pièces des planchers"},
    {"Weight not known.", "Poids inconnu."},
    {"Width and height are of the opening in the logs; from left: from the wall's left corner; sill: over "
     "the foundation. The frame is no higher than what is left for it under the settle space, and no wider "
     "than the opening less what its jambs and keys take. Past left and past right: how far the header log "
     "runs on beyond the opening.",
     "Largeur et hauteur sont celles de l’ouverture dans les pièces ; de la gauche : depuis l’angle gauche "
     "du mur ; allège : au-dessus de la fondation. Le cadre n’est pas plus haut que ce qui lui reste sous le "
     "jeu de tassement, ni plus large que l’ouverture moins ce que prennent ses jambages et ses clés. Passe "
     "à gauche et à droite : de combien la pièce de linteau continue au-delà de l’ouverture."},
    {"openings, pegs, sticks, floors", "ouvertures, chevilles, bois, planchers"},
    {"wall %1, inside: %2", "mur %1, à l’intérieur : %2"},
    {"wall %1, jambs from its left outside corner: %2",
     "mur %1, jambages depuis son angle extérieur gauche : %2"},
    {"wall %1, over its outside face: %2", "mur %1, hors tout à l’extérieur : %2"},
    {"walls, floors and what is seen behind", "murs, planchers et ce qu’on voit derrière"},
    {"↑ up, → %1", "↑ haut, → %1"},
    {"↑ up, → datum end", "↑ haut, → bout d’origine"},
    {"→ datum end", "→ bout d’origine"},
};

} // namespace

std::span<const Entry> french_of_schedules() {
    return entries;
}

} // namespace roundlay
