// Of taking down and raising.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 is new wood in %2 and lifted with it: tick %2, which counts for both",
     "%1 est du bois neuf dans %2 et se lève avec elle : cochez %2, ce qui vaut pour les deux"},
    {"%1 is ticked as down, and it is recorded as missing: take the tick back, or the zone that says so out "
     "of the record",
     "%1 est coché comme descendu, et noté comme manquant : retirez la coche, ou la zone qui le dit du "
     "relevé"},
    {"%1 is ticked as down, and what lies over it is not: %2. It could not rise past that: look which of "
     "them is down",
     "%1 est cochée comme descendue, et ce qui est au-dessus d’elle ne l’est pas : %2. Elle ne pourrait pas "
     "passer : voyez laquelle est descendue"},
    {"%1 is ticked as pegged and not as up: a piece is pegged where it lies",
     "%1 est cochée comme chevillée et non comme levée : une pièce se cheville là où elle est posée"},
    {"%1 is ticked as up and covers pegs that are not ticked as driven, of %2",
     "%1 est cochée comme levée et couvre des chevilles non cochées comme enfoncées, de %2"},
    {"%1 is ticked as up and lies over what is not: %2. It could not be lowered past %1 any more",
     "%1 est cochée comme levée et se trouve au-dessus de ce qui ne l’est pas : %2. Cela ne pourrait plus "
     "descendre à sa place le long de %1"},
    {"%1 is ticked as up, and what it rests on is not: %2. It would stand on air: look which of them is up",
     "%1 est cochée comme levée, et ce sur quoi elle repose ne l’est pas : %2. Elle serait en l’air : voyez "
     "laquelle est levée"},
    {"%1 pieces, one on the other", "%1 pièces, l’une sur l’autre"},
    {"%1 pieces, the last raised first", "%1 pièces, la dernière levée en premier"},
    {"%1 to %2 kg", "%1 à %2 kg"},
    {"%1 to %2 lb", "%1 à %2 lb"},
    {"Before you begin", "Avant de commencer"},
    {"Both are shown level, on the new foundation: lifting what had sunk changes no wood.",
     "Les deux sont montrés de niveau, sur la nouvelle fondation : relever ce qui s’était affaissé ne change "
     "aucun bois."},
    {"Checked", "Contrôlée"},
    {"Down", "Descendue"},
    {"Down: %1 of %2 pieces.", "Descendues : %1 pièces sur %2."},
    {"Free after", "Libre après"},
    {"Geometry alone: what lies free to rise. Whether a wall, a corner or a roof stands meanwhile, what is "
     "braced, and with what is lifted, is for a licensed professional and whoever is on the site.",
     "La géométrie seule : ce qui est libre de monter. Si un mur, un angle ou un toit tient pendant ce "
     "temps, ce qu’il faut étayer et avec quoi l’on lève, c’est à un professionnel agréé et à qui est sur "
     "place d’en décider."},
    {"How far a piece must rise before the deepest of its joints is clear.",
     "De combien une pièce doit monter avant que le plus profond de ses assemblages soit dégagé."},
    {"Joints cut", "Entailles faites"},
    {"Laid on", "Posée sur"},
    {"Left: %1 {piece|pieces}, %2; the heaviest lift of them %3, %4.",
     "{Reste|Restent} : %1 {pièce|pièces}, %2 ; la plus lourde à lever : %3, %4."},
    {"Left: %1 {piece|pieces}; what they weigh is not known.",
     "{Reste|Restent} : %1 {pièce|pièces} ; leur poids n’est pas connu."},
    {"May come down now: %1.", "Peuvent descendre maintenant : %1."},
    {"May go up now: %1.", "Peuvent être levées maintenant : %1."},
    {"Missing", "Manquant"},
    {"Nothing is left.", "Il ne reste rien."},
    {"Order", "Ordre"},
    {"Pegged", "Chevillée"},
    {"Raise in this order, and tick off", "Lever dans cet ordre, et cocher"},
    {"Raising", "Levage"},
    {"Recorded as missing and left out: %1.", "Noté comme manquant et laissé de côté : %1."},
    {"So far", "Fait à ce jour"},
    {"Take down in this order: the last that was raised comes first",
     "Démonter dans cet ordre : la dernière levée vient en premier"},
    {"Taking down", "Démontage"},
    {"The order is geometry alone: what lies free to rise. Whether a wall, a corner or a roof stands "
     "meanwhile, what is braced, and with what is lifted, is for a licensed professional and whoever is on "
     "the site.",
     "L’ordre est la géométrie seule : ce qui est libre de monter. Si un mur, un angle ou un toit tient "
     "pendant ce temps, ce qu’il faut étayer et avec quoi l’on lève, c’est à un professionnel agréé et à qui "
     "est sur place d’en décider."},
    {"Then held by its pegs alone", "Ne tient alors que par ses chevilles"},
    {"Up", "Levée"},
    {"Up: %1 of %2 pieces.", "Levées : %1 pièces sur %2."},
    {"free after", "libre après"},
    {"is down", "descendue"},
    {"is up", "levée"},
    {"kg from", "kg de"},
    {"laid on", "posée sur"},
    {"lb from", "lb de"},
    {"lifted with %1, whose weight here is that of both",
     "levée avec %1, dont le poids ici est celui des deux"},
    {"may come down", "peut descendre"},
    {"may go up", "peut être levée"},
    {"no.", "n°"},
    {"now", "maintenant"},
    {"pegged", "chevillée"},
    {"raising and taking down, piece by piece, to be ticked off",
     "levage et démontage, pièce par pièce, à cocher"},
    {"raising, piece by piece, to be ticked off", "levage, pièce par pièce, à cocher"},
    {"shut in", "enfermée"},
    {"the house has no state %1: name one that it has, or leave it out",
     "la maison n’a pas d’état %1 : nommez-en un qu’elle a, ou omettez-le"},
    {"the shell has no piece %1, and what was ticked of it counts for none: mend the tag, or leave it where "
     "the piece may come back",
     "la coque n’a pas de pièce %1, et ce qui en a été coché ne compte pour aucune : corrigez le repère, ou "
     "laissez-le si la pièce peut revenir"},
    {"the shell has no piece %1, and what was ticked of it counts for none: was it %2?",
     "la coque n’a pas de pièce %1, et ce qui en a été coché ne compte pour aucune : était-ce %2 ?"},
    {"then held by pegs alone", "ne tient alors que par ses chevilles"},
    {"waits", "attend"},
    {"waits for", "attend"},
    {"with", "avec"},
};

} // namespace

std::span<const Entry> french_of_raising() {
    return entries;
}

} // namespace roundlay
