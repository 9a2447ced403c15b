// Of lists: columns and sums.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 N at %2", "%1 N à %2"},
    {"%1 lb at %2", "%1 lb à %2"},
    {"%1 left, %2 right", "%1 à gauche, %2 à droite"},
    {"%1 place", "%1 endroit"},
    {"%1 places", "%1 endroits"},
    {"%1: %2 (radial) to %3 (tangential) of heights and widths, none of lengths, by %4 (%5) and Eq. 4-9, "
     "though %6; walls settle by more than that",
     "%1 : %2 (radial) à %3 (tangentiel) des hauteurs et largeurs, rien des longueurs, selon %4 (%5) et "
     "l’éq. 4-9, bien que %6 ; les murs tassent de plus que cela"},
    {"%1: %2 (radial) to %3 (tangential) of heights and widths, none of lengths, by %4 (%5) and Eq. 4-9; "
     "walls settle by more than that",
     "%1 : %2 (radial) à %3 (tangentiel) des hauteurs et largeurs, rien des longueurs, selon %4 (%5) et "
     "l’éq. 4-9 ; les murs tassent de plus que cela"},
    {"After, left", "Après, à gauche"},
    {"At butt", "Au gros bout"},
    {"At tip", "Au petit bout"},
    {"Before, left", "Avant, à gauche"},
    {"Butt", "Gros bout"},
    {"From %1 to %2: %3.", "De %1 à %2 : %3."},
    {"It leaves a sliver of a log beside an opening in %1; none that was tried leaves fewer and is as level.",
     "Elle laisse une mince bande de pièce à côté d’une ouverture en %1 ; aucune des autres essayées n’en "
     "laisse moins en étant aussi de niveau."},
    {"Level is %1 a log, the mean of the pile. Errors are of a wall's top at its ends, + above level.",
     "Le niveau est de %1 par pièce, la moyenne du tas. Les écarts sont ceux du haut d’un mur à ses bouts, + "
     "au-dessus du niveau."},
    {"Levelled: largest %1, typical %2; no other arrangement in these places is better.",
     "De niveau : le plus grand écart %1, l’écart type %2 ; aucune autre disposition dans ces places n’est "
     "meilleure."},
    {"Levelled: largest %1, typical %2; none can be under %3, or typically under %4.",
     "De niveau : le plus grand écart %1, l’écart type %2 ; aucune ne peut être sous %3, ni l’écart type "
     "sous %4."},
    {"Logs as they come: largest error %1, typical (root mean square) %2.",
     "Pièces comme elles viennent : le plus grand écart %1, l’écart type (moyenne quadratique) %2."},
    {"Round", "Rang"},
    {"State: %1", "État : %1"},
    {"The most level arrangement, largest %1, typical %2, cannot be laid: its logs are so high that openings "
     "would part other rounds than these were chosen for.",
     "La disposition la plus de niveau, au plus %1, écart type %2, ne peut être posée : ses pièces sont si "
     "hautes que les ouvertures couperaient d’autres rangs que ceux pour lesquels elles sont choisies."},
    {"The most level arrangement, largest %1, typical %2, would leave a sliver of a log beside an opening in "
     "%3; this one in %4: none that was tried leaves fewer and is as level.",
     "La disposition la plus de niveau, au plus %1, écart type %2, laisserait une mince bande de pièce à "
     "côté d’une ouverture en %3 ; celle-ci en %4 : aucune des autres essayées n’en laisse moins en étant "
     "aussi de niveau."},
    {"The most level arrangement, largest %1, typical %2, would leave a sliver of a log beside an opening in "
     "%3; this one in none.",
     "La disposition la plus de niveau, au plus %1, écart type %2, laisserait une mince bande de pièce à "
     "côté d’une ouverture en %3 ; celle-ci, nulle part."},
    {"Which rounds beside openings are one log and which several was settled by lengths alone: other ways "
     "were not levelled.",
     "Quels rangs à côté d’ouvertures sont d’une pièce et lesquels de plusieurs a été réglé par les "
     "longueurs seules : d’autres manières n’ont pas été essayées."},
    {"With these logs the shell stands %1.", "Avec ces pièces, la coque se dresse : %1."},
    {"after", "après"},
    {"allowable", "admissible"},
    {"amount", "quantité"},
    {"bearing MPa", "appui MPa"},
    {"bearing psi", "appui lb/po²"},
    {"bearings", "appuis"},
    {"before", "avant"},
    {"bending MPa", "flexion MPa"},
    {"bending psi", "flexion lb/po²"},
    {"bends in", "fléchit po"},
    {"bends mm", "fléchit mm"},
    {"blank to", "ébauche à"},
    {"board feet", "pieds-planche"},
    {"board feet of the order list are of one stick each, of the least round and the ordered length, by the "
     "formulas of Doyle (from memory), Scribner (seen) and International 1/4 in (seen): estimates of sawn "
     "boards, which differ by design",
     "les pieds-planche de la commande sont ceux d’une seule pièce, du moindre rond et de la longueur "
     "commandée, par les formules de Doyle (de mémoire), Scribner (vu) et International 1/4 po (vu) : des "
     "estimations de planches sciées, qui diffèrent par nature"},
    {"bore", "perçage"},
    {"bores from", "perçages de"},
    {"bores to", "perçages à"},
    {"caution", "mise en garde"},
    {"change", "changement"},
    {"clear spans", "portées libres"},
    {"cuts that come", "coupes nouvelles"},
    {"cuts that go", "coupes supprimées"},
    {"diameter", "diamètre"},
    {"distinct pieces", "pièces différentes"},
    {"door", "porte"},
    {"each Int. 1/4 bd ft", "chacun, pi-planche Int. 1/4"},
    {"each blank kg to", "chacun, ébauche kg à"},
    {"each blank lb to", "chacun, ébauche lb à"},
    {"each kg from", "chacun, kg de"},
    {"each lb from", "chacun, lb de"},
    {"each log kg to", "chacun, rondin kg à"},
    {"each log lb to", "chacun, rondin lb à"},
    {"estimated high weight of all pieces", "masse estimée, au plus, de toutes les pièces"},
    {"estimated high weight of its blank", "poids haut estimé de son ébauche"},
    {"estimated high weight of its round log", "poids haut estimé de son rondin"},
    {"estimated high weight of the heaviest piece", "masse estimée, au plus, de la pièce la plus lourde"},
    {"estimated high weight of those whose wood is known",
     "masse estimée, au plus, de celles dont le bois est connu"},
    {"estimated low weight of all pieces", "masse estimée, au moins, de toutes les pièces"},
    {"estimated low weight of those whose wood is known",
     "masse estimée, au moins, de celles dont le bois est connu"},
    {"finish or note", "façon ou note"},
    {"floor", "plancher"},
    {"for", "pour"},
    {"from left", "de la gauche"},
    {"from log's left end", "du bout gauche"},
    {"from outside", "de l’extérieur"},
    {"from wall", "du mur"},
    {"from wall's left", "de la gauche du mur"},
    {"ft3", "pi³"},
    {"gone", "disparue"},
    {"half logs counted", "demi-pièces comprises"},
    {"header", "linteau"},
    {"height", "hauteur"},
    {"height by the rounds", "hauteur d’après les rangs"},
    {"height that stands, highest", "hauteur réelle, au plus haut"},
    {"height that stands, lowest", "hauteur réelle, au plus bas"},
    {"in its place", "à sa place"},
    {"islands", "îlots"},
    {"kind", "sorte"},
    {"least round", "moindre rond"},
    {"left end", "bout gauche"},
    {"left for the frame", "reste au cadre"},
    {"length", "longueur"},
    {"length after", "longueur après"},
    {"length before", "longueur avant"},
    {"length of all blanks", "longueur de toutes les ébauches"},
    {"lengths are rounded up to the next %1; each peg is cut to its own bore, which the cut sheets say",
     "les longueurs sont arrondies au %1 supérieur ; chaque cheville est coupée à son propre perçage, que "
     "disent les fiches de taille"},
    {"live N/mm", "usage N/mm"},
    {"live lb/ft", "usage lb/pi"},
    {"log rules", "barèmes de cubage"},
    {"log to", "rondin à"},
    {"logs in the walls that have most", "pièces dans les murs qui en ont le plus"},
    {"longer", "plus longue"},
    {"longer by", "plus longue de"},
    {"longest blank", "plus longue ébauche"},
    {"m3", "m³"},
    {"moved", "déplacée"},
    {"name", "nom"},
    {"new wood", "bois neuf"},
    {"not screened: no live_load is stated, or the species is not known",
     "pas examinée : aucune live_load n’est indiquée, ou l’essence n’est pas connue"},
    {"note", "note"},
    {"old wood replaced: %1", "bois ancien remplacé : %1"},
    {"on foundation", "sur fondation"},
    {"order lengths", "longueurs à commander"},
    {"past left", "passe à gauche"},
    {"past right", "passe à droite"},
    {"peg lengths", "longueurs des chevilles"},
    {"piece", "pièce"},
    {"pieces", "pièces"},
    {"pulls up N", "tire vers le haut N"},
    {"pulls up lb", "tire vers le haut lb"},
    {"qty", "qté"},
    {"raise", "levage"},
    {"re-cut", "retaillée"},
    {"right end", "bout droit"},
    {"round", "rang"},
    {"rounded up to the next %1; no trim is added", "arrondies au %1 supérieur, sans surlongueur"},
    {"settle space", "tassement"},
    {"shear MPa", "cisaillement MPa"},
    {"shear psi", "cisaillement lb/po²"},
    {"shorter", "plus courte"},
    {"shrinkage in drying to 12 %", "retrait en séchant à 12 %"},
    {"sill", "allège"},
    {"span/", "portée/"},
    {"tag", "repère"},
    {"top, left", "haut, à gauche"},
    {"top, right", "haut, à droite"},
    {"unchanged", "inchangée"},
    {"under face, left", "dessous, à gauche"},
    {"under face, right", "dessous, à droite"},
    {"unit", "unité"},
    {"volume of all blanks", "volume de toutes les ébauches"},
    {"volume of all finished pieces", "volume de toutes les pièces finies"},
    {"wall", "mur"},
    {"weight basis", "base des masses"},
    {"weight of all pieces", "masse de toutes les pièces"},
    {"what", "quoi"},
    {"width", "largeur"},
    {"window", "fenêtre"},
    {"yes", "oui"}};

} // namespace

std::span<const Entry> french_of_lists() {
    return entries;
}

} // namespace roundlay
