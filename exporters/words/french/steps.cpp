// Of steps of the foundation.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"a rise of %1 would carry it, else that much is to be packed",
     "une hauteur de %1 la porterait, sinon il faut caler d’autant"},
    {"a rise of %1 would start at the next one, and %2 leave enough",
     "une hauteur de %1 partirait de la suivante, et %2 en laissent assez"},
    {"a step needs a width and a rise above zero",
     "un ressaut demande une largeur et une hauteur au-dessus de zéro"},
    {"at corner %1 wall %2 stands %3 high and wall %4 %5",
     "à l’angle %1 le mur %2 est haut de %3 et le mur %4 de %5"},
    {"at most %1 leaves a log on it", "%1 au plus laisse une pièce dessus"},
    {"it ends %1 from the left, in or too near the notches of corner %2",
     "il finit à %1 de la gauche, dans ou trop près des entailles de l’angle %2"},
    {"it fits from %1 on", "il tient à partir de %1"},
    {"it fits from %1 on, or where it takes the corner in, to the wall's end",
     "il tient à partir de %1, ou, s’il prend l’angle, jusqu’au bout du mur"},
    {"it fits up to %1", "il tient jusqu’à %1"},
    {"it fits up to %1 or from %2", "il tient jusqu’à %1 ou à partir de %2"},
    {"it fits up to %1 or from %2, or where it takes the corner in, to the wall's end",
     "il tient jusqu’à %1 ou à partir de %2, ou, s’il prend l’angle, jusqu’au bout du mur"},
    {"it fits up to %1, or where it takes the corner in, to the wall's end",
     "il tient jusqu’à %1, ou, s’il prend l’angle, jusqu’au bout du mur"},
    {"it fits where it takes the corner in, to the wall's end",
     "il tient s’il prend l’angle, jusqu’au bout du mur"},
    {"it fits wholly over the step with a sill of %1 or more, or %2 beside it",
     "elle tient toute au-dessus du ressaut avec une allège de %1 ou plus, ou à %2 à côté"},
    {"it leaves too little wall between itself and %1", "il laisse trop peu de mur jusqu’au %1"},
    {"it overlaps step %1", "il recouvre le ressaut %1"},
    {"it rises %1, but wall %2 is only %3 high", "il monte de %1, mais le mur %2 n’est haut que de %3"},
    {"it runs from %1 to %2, but wall %3 is %4 long", "il va de %1 à %2, mais le mur %3 est long de %4"},
    {"it runs into %1 of the foundation or leaves too little wood beside it",
     "elle rencontre le %1 de la fondation ou laisse trop peu de bois à côté"},
    {"let it start %1 past the end of that one", "faites-le partir à %1 de la fin de celui-ci"},
    {"let it start at %1, where that one ends, or %2 further on",
     "faites-le partir à %1, où celui-ci finit, ou %2 plus loin"},
    {"state a step of wall %1 that takes in that corner with a rise of %2",
     "indiquez un ressaut du mur %1 qui prend cet angle, haut de %2"},
    {"the lowest log over the step lies %1 above it",
     "la pièce la plus basse sur le ressaut est à %1 au-dessus"},
    {"the step leaves only %1 of the log that lies on it",
     "le ressaut ne laisse que %1 de la pièce posée dessus"},
};

} // namespace

std::span<const Entry> french_of_steps() {
    return entries;
}

} // namespace roundlay
