// Of pegs and bores.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 at most", "%1 au plus"},
    {"%1 from the left lies past the ends of wall %2, which is %3 long",
     "%1 depuis la gauche est au-delà des bouts du mur %2, qui est long de %3"},
    {"%1 from the left there is no log, but %2 of the foundation",
     "à %1 de la gauche il n’y a pas de pièce, mais le %2 de la fondation"},
    {"%1 from the left there is no whole log: %2 is there",
     "à %1 de la gauche il n’y a pas de pièce entière : %2 s’y trouve"},
    {"%1 from the left there is no whole log: the notches of corner %2 are there",
     "à %1 de la gauche il n’y a pas de pièce entière : les entailles de l’angle %2 s’y trouvent"},
    {"%1 from the left would do", "%1 depuis la gauche conviendrait"},
    {"%1 on %2 and %3 more joints of this wall: held in %4 places where %5 are asked for, as there is no "
     "room for more",
     "%1 sur %2 et %3 autres contacts de ce mur : tenus en %4 points là où %5 sont demandés, faute de place"},
    {"%1 on %2: held in %3 places where %4 are asked for, as there is no room for more",
     "%1 sur %2 : tenue en %3 points là où %4 sont demandés, faute de place"},
    {"a bore %1 from an end breaks out of it", "un perçage à %1 d’un bout en sort"},
    {"a bore of %1 leaves no wood beside it in a wall %2 thick",
     "un perçage de %1 ne laisse pas de bois à côté de lui dans un mur épais de %2"},
    {"a bore of %1 takes more than half of a wall %2 thick: what is left beside it splits easily",
     "un perçage de %1 prend plus de la moitié d’un mur épais de %2 : ce qui reste à côté se fend "
     "facilement"},
    {"a bore of %1 whose middle lies %2 from the outside leaves no wood beside it in a log %3 thick",
     "un perçage de %1 dont le milieu est à %2 de l’extérieur ne laisse pas de bois à côté de lui dans une "
     "pièce épaisse de %3"},
    {"a draw of %1 leaves no way through for a peg of %2",
     "un décalage de %1 ne laisse pas passer une cheville de %2"},
    {"a draw of %1 would break a peg of %2", "un tirage de %1 casserait une cheville de %2"},
    {"bores %1 apart run into one another", "des perçages à %1 se rencontrent"},
    {"from %1 to %2 from the outside it does", "de %1 à %2 de l’extérieur il en laisse"},
    {"from round %1 to round %2 it would do there", "du rang %1 au rang %2 il y conviendrait"},
    {"from round %1 to round %2 it would do there, or %3 from the left",
     "du rang %1 au rang %2 il y conviendrait, ou bien à %3 de la gauche"},
    {"it goes from round %1 up to round %2: that is through no log",
     "il va du rang %1 au rang %2 : cela ne traverse aucune pièce"},
    {"it runs into a cut from %1 to %2 from the left", "il rencontre une taille de %1 à %2 depuis la gauche"},
    {"keep more than the diameter", "gardez plus que le diamètre"},
    {"leave draw out, or bored = \"at the bench\"", "omettez draw, ou bored = \"at the bench\""},
    {"local code decides whether that is enough", "le code local décide si cela suffit"},
    {"pegs that are bored in place go straight down: nothing is drawn",
     "les chevilles percées en place descendent tout droit : rien n’est tiré"},
    {"piece %1 on %2 has no place for a peg on a stretch: its fastening places lie up to %3 apart, and never "
     "more than %4 is asked for",
     "la pièce %1 sur %2 n’a sur une partie aucune place pour une cheville : ses attaches sont distantes de "
     "%3 au plus large, et jamais plus de %4 n’est demandé"},
    {"piece %1 on %2 needs %3 pegs, and only %4 can stand there between ends, notches and other bores",
     "la pièce %1 sur %2 demande %3 chevilles, et il n’y a place que pour %4 entre les bouts, les entailles "
     "et d’autres perçages"},
    {"piece %1 on %2 needs %3 pegs, but its ends, notches and other bores leave no place for one",
     "la pièce %1 sur %2 demande %3 chevilles, mais ses bouts, ses entailles et d’autres perçages ne "
     "laissent de place à aucune"},
    {"piece %1 on %2 needs 1 peg, but its ends, notches and other bores leave no place for one",
     "la pièce %1 sur %2 demande 1 cheville, mais ses bouts, ses entailles et d’autres perçages n’en "
     "laissent pas la place"},
    {"square pegs need a side above zero", "des chevilles carrées demandent un côté supérieur à zéro"},
    {"square pegs of %1 do not hold in bores of %2",
     "des chevilles carrées de %1 ne tiennent pas dans des perçages de %2"},
    {"state the rounds that it goes through, or another place",
     "indiquez les rangs qu’il traverse, ou un autre endroit"},
    {"the wall has only %1 rounds", "le mur n’a que %1 rangs"},
    {"their arrises bite where the side is between %1 and that",
     "leurs arêtes mordent si le côté est entre %1 et cela"},
    {"there is no wall %1 in this shell", "cette coque n’a pas de mur %1"},
};

} // namespace

std::span<const Entry> french_of_fastenings() {
    return entries;
}

} // namespace roundlay
