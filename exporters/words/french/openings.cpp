// Of openings and what is cut for their frames.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 leaves only %2 of the log over it, where at least %3 should stay",
     "%1 ne laisse que %2 de la pièce au-dessus, où il devrait en rester au moins %3"},
    {"%1 leaves only %2 of the log under it, where at least %3 should stay",
     "%1 ne laisse que %2 de la pièce au-dessous, où il devrait en rester au moins %3"},
    {"%1 leaves only %2 of the log under its sloping sill outside, where at least %3 should stay",
     "%1 ne laisse dehors que %2 de la pièce sous son appui en pente, où il devrait en rester au moins %3"},
    {"a groove %1 deep is more than a spline needs",
     "une rainure profonde de %1 est plus qu’une languette ne demande"},
    {"a groove %1 wide leaves less than half of jambs %2 thick",
     "une rainure large de %1 laisse moins de la moitié de jambages épais de %2"},
    {"a groove %1 wide leaves too little of jambs %2 thick",
     "une rainure large de %1 laisse trop peu de jambages épais de %2"},
    {"a height under %1 leaves a log over it", "une hauteur sous %1 laisse une pièce au-dessus"},
    {"a width of %1 at most fits there", "une largeur de %1 au plus y tient"},
    {"a width of %1 at most fits, at %2 from the left",
     "une largeur de %1 au plus tient, à %2 depuis la gauche"},
    {"an opening needs a width and a height above zero",
     "une ouverture demande une largeur et une hauteur au-dessus de zéro"},
    {"at %1 from the left it fits", "à %1 depuis la gauche elle tient"},
    {"at %1 or at %2 from the left it fits", "à %1 ou à %2 depuis la gauche elle tient"},
    {"half of that at most", "la moitié au plus"},
    {"it comes too near the joint of corner %1", "elle vient trop près de l’assemblage de l’angle %1"},
    {"it comes too near the notches of wall %1 at %2", "elle vient trop près des entailles du mur %1 à %2"},
    {"it ends %1 above the foundation, but wall %2 is only %3 high",
     "elle finit à %1 de la fondation, mais le mur %2 n’est haut que de %3"},
    {"it is %1 wide", "elle est large de %1"},
    {"it leaves %1 of wood to %2", "elle laisse %1 de bois jusqu’à %2"},
    {"it leaves %1 of wood to the joint of corner %2",
     "elle laisse %1 de bois jusqu’à l’assemblage de l’angle %2"},
    {"it leaves %1 of wood to the notches at %2", "elle laisse %1 de bois jusqu’aux entailles en %2"},
    {"it leaves too little wood between itself and %1", "elle laisse trop peu de bois entre elle et %1"},
    {"it overlaps %1", "elle recouvre %1"},
    {"its sill is not cut to the slope stated for sills, which falls %1 through the wall: the log under it "
     "ends %2 lower",
     "son appui n’est pas taillé à la pente indiquée pour les appuis, qui tombe de %1 à travers le mur : la "
     "pièce dessous finit %2 plus bas"},
    {"less than %1 splits off easily", "moins de %1 se fend facilement"},
    {"lower its sill by %1", "baissez son allège de %1"},
    {"lower its sill by %1 and add as much to its height",
     "baissez son allège de %1 et ajoutez-en autant à sa hauteur"},
    {"lower its top by %1", "baissez son haut de %1"},
    {"more rounds or a lower sill would hold it", "plus de rangs ou une allège plus basse la tiendrait"},
    {"no small change of this one figure mends it: a list of the seams tells which heights cost no wood",
     "aucun petit changement de cette seule cote n’y remédie : une liste des joints dit quelles hauteurs ne "
     "coûtent pas de bois"},
    {"raise its sill by %1", "montez son allège de %1"},
    {"raise its sill by %1 and take as much off its height",
     "montez son allège de %1 et ôtez-en autant à sa hauteur"},
    {"raise its top by %1", "montez son haut de %1"},
    {"sills that fall %1 through the wall cut their logs in two",
     "des appuis qui descendent de %1 à travers le mur coupent leurs pièces en deux"},
    {"the island is %1 long", "l’îlot est long de %1"},
    {"the sill lies under the foundation", "l’allège est sous la fondation"},
    {"two grooves %1 deep leave too little of it; %2 at most",
     "deux rainures profondes de %1 en laissent trop peu ; %2 au plus"},
    {"wall %1 has no place as wide as that", "le mur %1 n’a pas de place aussi large"},
    {"wall %1 has no place for an opening", "le mur %1 n’a pas de place pour une ouverture"},
    {"wall %1 has no place wider than %2", "le mur %1 n’a pas de place plus large que %2"},
};

} // namespace

std::span<const Entry> french_of_openings() {
    return entries;
}

} // namespace roundlay
