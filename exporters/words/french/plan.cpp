// Of the plan: walls, partitions, and where they meet.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 apart", "à %1 l’un de l’autre"},
    {"%1 east", "%1 à l’est"},
    {"%1 east and %2 north", "%1 à l’est et %2 au nord"},
    {"%1 east and %2 south", "%1 à l’est et %2 au sud"},
    {"%1 north", "%1 au nord"},
    {"%1 south", "%1 au sud"},
    {"%1 west", "%1 à l’ouest"},
    {"%1 west and %2 north", "%1 à l’ouest et %2 au nord"},
    {"%1 west and %2 south", "%1 à l’ouest et %2 au sud"},
    {"a corner between 30 and 150 degrees can be cut, best a right angle",
     "un angle de 30 à 150 degrés peut être taillé, au mieux un angle droit"},
    {"a shell needs at least four walls, %1 are stated", "il faut au moins quatre murs, %1 sont indiqués"},
    {"an overhanging end of one runs into the other", "un bout qui déborde de l’un entre dans l’autre"},
    {"between 30 and 150 degrees can be cut", "de 30 à 150 degrés peuvent être taillés"},
    {"between two notches of a log %1 of wood are needed: set them %2 further apart",
     "entre deux entailles d’une pièce il faut %1 de bois : écartez-les de %2"},
    {"from %1 to %2 from the left of wall %3 it fits", "de %1 à %2 depuis la gauche du mur %3, elle tient"},
    {"from where it starts it can end in: %1", "d’où elle part, elle peut finir dans : %1"},
    {"in the same place or past its end", "au même endroit ou au-delà de son bout"},
    {"it ends in wall %1, which this shell does not have", "elle finit au mur %1, que cette coque n’a pas"},
    {"it is %1 long, shorter than its two tails", "il est long de %1, moins que ses deux queues"},
    {"it leaves wall %1 at too sharp an angle for tails",
     "elle quitte le mur %1 sous un angle trop aigu pour des queues"},
    {"it meets wall %1 at too sharp an angle for tails",
     "elle rencontre le mur %1 sous un angle trop aigu pour des queues"},
    {"it must be longer than %1", "il doit dépasser %1"},
    {"it starts in wall %1, which is none of the outside walls or of the partitions stated before it",
     "elle part du mur %1, qui n’est ni un mur extérieur ni une cloison indiquée avant elle"},
    {"leave out the length of wall %1 and it closes the plan, with %2",
     "omettez la longueur du mur %1 : il ferme le plan, avec %2"},
    {"leave out the lengths of walls %1 and %2 and they close the plan, with %3 and %4",
     "omettez les longueurs des murs %1 et %2 : ils ferment le plan, avec %3 et %4"},
    {"no place along wall %1 does, as the walls are stated",
     "aucune place le long du mur %1 ne va, tels que les murs sont indiqués"},
    {"one wall more or less on the way through corner %1 would fit",
     "un mur de plus ou de moins sur le chemin de l’angle %1 conviendrait"},
    {"partition %1 meets wall %2 past its end", "la cloison %1 rencontre le mur %2 au-delà de son bout"},
    {"set them further apart", "écartez-les"},
    {"state them as one wall or turn the second one", "indiquez-les comme un seul mur ou tournez le second"},
    {"the outside must run once round without meeting itself",
     "l’extérieur doit faire un tour sans se rencontrer"},
    {"the walk round the outside ends %1 of where it began",
     "le tour de l’extérieur finit à %1 de son départ"},
    {"the wall runs from %1 to %2 seen from its left", "vu de sa gauche, le mur va de %1 à %2"},
    {"the walls' lengths must bring it back", "les longueurs des murs doivent l’y ramener"},
    {"there is room for %1 of overhang between them", "il y a place pour %1 de débord entre eux"},
    {"they cross or touch", "ils se croisent ou se touchent"},
    {"walk from wall %1 toward wall %2, or state another wall",
     "allez du mur %1 vers le mur %2, ou indiquez un autre mur"},
    {"walk once round the outside, one [[wall]] a side",
     "faites une fois le tour de l’extérieur, un [[wall]] par côté"},
    {"wall %1 does not lie ahead of it", "le mur %1 n’est pas devant elle"},
    {"walls %1 and %2 meet wall %3 %4", "les murs %1 et %2 rencontrent le mur %3 %4"},
    {"walls %1 and %2 run in one line", "les murs %1 et %2 sont en ligne"},
    {"walls %1 and %2 run into one another by %3, their ends included",
     "les murs %1 et %2 se pénètrent de %3, bouts compris"},
    {"walls %1 and %2 turn too little or too sharply for tails",
     "les murs %1 et %2 tournent trop peu ou trop fort pour des queues"},
    {"walls %1 and %2 would both start with a %3 log: going round a closed way of walls the starts must "
     "change at every corner, which takes an even number of walls",
     "les murs %1 et %2 commenceraient tous deux par une %3 : sur un circuit fermé les départs changent à "
     "chaque angle, ce qui demande un nombre pair de murs"},
};

} // namespace

std::span<const Entry> french_of_plan() {
    return entries;
}

} // namespace roundlay
