// Of rounds, logs and tails.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 are needed, which a stick of %2 has", "il en faut %1, ce qu’a un bois de %2"},
    {"%1 rounds at %2 reach %3, not the stated height of %4",
     "%1 rangs de %2 atteignent %3, non la hauteur indiquée de %4"},
    {"%1 rounds reach %2 at a pitch of %3, not the stated %4",
     "%1 rangs atteignent %2 au pas de %3, non de %4 comme indiqué"},
    {"a bore in logs scoped over one another stands in the middle of its wall",
     "un perçage dans des pièces creusées l’une sur l’autre est au milieu de son mur"},
    {"a diameter of at least that, or a lower pitch would fit",
     "un diamètre au moins égal ou un pas plus petit conviendrait"},
    {"a flatter slope would fit", "une pente plus douce irait"},
    {"a gap of %1 leaves no log in a pitch of %2", "un jeu de %1 ne laisse aucune pièce dans un pas de %2"},
    {"a higher pitch, a smaller gap or a higher log leaves wood",
     "un pas plus haut, un jeu plus petit ou une pièce plus haute laisse du bois"},
    {"a log %1 thick does not reach the log below it at a pitch of %2",
     "une pièce épaisse de %1 n’atteint pas celle du dessous à un pas de %2"},
    {"a log is at most as high as the pitch", "une pièce est au plus haute comme le pas"},
    {"a pitch of %1 or a flatter slope would fit", "un pas de %1 ou une pente plus douce conviendrait"},
    {"a pitch of %1 would fit", "un pas de %1 conviendrait"},
    {"a saddle needs wood past it: an overhang of %1 at least, better of the log's own diameter",
     "une selle demande du bois au-delà : un débord d’au moins %1, mieux du diamètre de la pièce"},
    {"a smaller gap, a flatter slope or a higher log would fill it",
     "un jeu plus petit, une pente plus douce ou une pièce plus haute la remplirait"},
    {"a stick %1 thick leaves a flat of only %2 on a log %3 high",
     "un bois épais de %1 ne laisse qu’un plat de %2 sur une pièce haute de %3"},
    {"a stick %1 thick leaves no flat on a log %2 high",
     "un bois épais de %1 ne laisse aucun plat sur une pièce haute de %2"},
    {"a thicker log there, or a thinner one under it, leaves more; no pitch does that its thinnest logs "
     "reach",
     "une pièce plus grosse là, ou une plus mince dessous, en laisse plus ; aucun pas ne le fait que ses "
     "pièces les plus minces atteignent"},
    {"between 1 and %1 can be laid", "on en pose de 1 à %1"},
    {"floors are let into hewn logs only, not into logs scoped over one another",
     "les planchers n’entrent que dans des pièces équarries, non dans des pièces creusées l’une sur l’autre"},
    {"going up corner %1, two logs of wall %2 follow one another at round %3",
     "en montant l’angle %1, deux pièces du mur %2 se suivent au rang %3"},
    {"leave out from_outside", "ôtez from_outside"},
    {"leave out log_height", "ôtez log_height"},
    {"leave out the gap, or state it as scribe in the table [notch]",
     "ôtez le jeu, ou indiquez-le par scribe dans la table [notch]"},
    {"leave them out", "ôtez-les"},
    {"logs %1 high do not fit in a pitch of %2", "des pièces hautes de %1 n’entrent pas dans un pas de %2"},
    {"logs scoped over one another are even cylinders whose spacing is the pitch alone",
     "des pièces creusées l’une sur l’autre sont des cylindres réguliers espacés du seul pas"},
    {"logs that are %1 higher, or a flatter slope, would fit",
     "des pièces plus hautes de %1, ou une pente plus douce, iraient"},
    {"other logs in the rounds below, or a plate hewn to suit, make it so",
     "d’autres pièces dans les rangs du dessous, ou une sablière équarrie en conséquence, l’y mettent"},
    {"rounds count from 1", "les rangs comptent à partir de 1"},
    {"saddles and tails do not go together: logs scoped over one another are so all round",
     "selles et queues ne vont pas ensemble : des pièces creusées l’une sur l’autre le sont tout autour"},
    {"sizes are stated for a log that this shell does not have",
     "des dimensions sont indiquées pour une pièce que cette coque n’a pas"},
    {"something is stated of piece %1, but this round has %2 piece, counted from the left",
     "on dit quelque chose de la pièce %1, mais ce rang a %2 pièce, comptée depuis la gauche"},
    {"something is stated of piece %1, but this round has %2 pieces, counted from the left",
     "on dit quelque chose de la pièce %1, mais ce rang a %2 pièces, comptées depuis la gauche"},
    {"state its diameter in place of heights and widths",
     "indiquez son diamètre au lieu de hauteurs et largeurs"},
    {"state one kind for the whole shell", "indiquez une seule sorte pour toute la coque"},
    {"state the wall's thickness as that of its widest log",
     "donnez au mur l’épaisseur de sa pièce la plus large"},
    {"state their diameter in place of heights and widths",
     "indiquez leur diamètre au lieu de hauteurs et largeurs"},
    {"state two of count, pitch and height", "indiquez deux des trois : nombre, pas, hauteur"},
    {"the half log of wall %1, round %2, is stated %3 high: at %4 they alternate; measure it again, or lay "
     "another log there",
     "la demi-pièce du mur %1, rang %2, est dite haute de %3 : à %4 elles alternent ; mesurez-la à nouveau, "
     "ou posez-y une autre pièce"},
    {"the heights stated of logs count, not the pitch: the walls stand %1 high, where %2 rounds of %3 make "
     "%4",
     "les hauteurs indiquées des pièces comptent, non le pas : les murs ont %1 de haut, là où %2 rangs de %3 "
     "font %4"},
    {"the heights stated of single logs make the two walls drift apart by half a round; measure them again, "
     "or change logs of the two walls for others",
     "les hauteurs données à certaines pièces écartent les deux murs d’un demi-rang ; mesurez-les à nouveau, "
     "ou échangez des pièces des deux murs"},
    {"the log of this round is %1 wide, more than its wall's %2",
     "la pièce de ce rang est large de %1, plus que les %2 de son mur"},
    {"the log of this round would be %1 high", "la pièce de ce rang serait haute de %1"},
    {"the log of this round would be %1 wide at one end", "la pièce de ce rang serait large de %1 à un bout"},
    {"the log of wall %1, round %2, is stated %3 high: at %4 they alternate; measure it again, or lay "
     "another log there",
     "la pièce du mur %1, rang %2, est dite haute de %3 : à %4 elles alternent ; mesurez-la à nouveau, ou "
     "posez-y une autre pièce"},
    {"the pitches of the two walls drift apart by half a round, make them equal",
     "les pas des deux murs s’écartent d’un demi-rang, rendez-les égaux"},
    {"the saddle leaves %1 of the log over the one that it crosses, under the least of %2",
     "la selle laisse %1 de la pièce sur celle qu’elle croise, sous le moindre de %2"},
    {"the seam runs %1 outside the log's body, so that much of the tail is not there",
     "le joint passe %1 hors du corps de la pièce : autant de la queue manque"},
    {"the shell has %1 rounds", "la coque a %1 rangs"},
    {"the tail is %1 thick at its thinnest, under the least of %2",
     "la queue est épaisse de %1 au plus mince, sous le moindre de %2"},
    {"the third is worked out", "le troisième s’en déduit"},
    {"the top is to be level but ends %1 out of it: wall %2 reaches %3, wall %4 only %5 at its lower end",
     "le haut doit être de niveau mais s’en écarte de %1 : le mur %2 atteint %3, le mur %4 seulement %5 à "
     "son bout le plus bas"},
    {"what would be left of the half log in its tail is %1 thick, under the least of %2: it stands between "
     "the walls, without a tail",
     "ce qui resterait de la demi-pièce dans sa queue a %1 d’épaisseur, sous le moins de %2 : elle est entre "
     "les murs, sans queue"},
    {"what would be left of the half log in the notch is %1 thick, under the least of %2: it stands in two "
     "pieces, one to either side of wall %3",
     "ce qui resterait de la demi-pièce dans l’entaille a %1 d’épaisseur, sous le moins de %2 : elle est en "
     "deux morceaux, un de chaque côté du mur %3"},
};

} // namespace

std::span<const Entry> french_of_rounds() {
    return entries;
}

} // namespace roundlay
