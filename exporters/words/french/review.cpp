// Of what the finished shell shows: wood, water, locks, settling.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"\"%1\"", "« %1 »"},
    {"%1 E %2 is one of small clear green %3 (%4).", "%1 E %2 en est une du bois vert sans défaut, %3 (%4)."},
    {"%1 asks for %2", "%1 demande %2"},
    {"%1 is asked for: another place or height of the opening gives it",
     "on demande %1 : une autre place ou une autre hauteur de l’ouverture le donne"},
    {"%1 is asked for: move the opening %2 to the left, or change a height",
     "on demande %1 : déplacez l’ouverture de %2 vers la gauche, ou changez une hauteur"},
    {"%1 is asked for: move the opening %2 to the right, or change a height",
     "on demande %1 : déplacez l’ouverture de %2 vers la droite, ou changez une hauteur"},
    {"%1 or %2", "%1 ou %2"},
    {"%1; until then no weight of it is given and no floor of it screened",
     "%1 ; d’ici là, aucun poids n’en est donné et aucun plancher n’en est examiné"},
    {"a bore of this piece runs into a notch, an edge or another bore",
     "un perçage de cette pièce rencontre une entaille, une arête ou un autre perçage"},
    {"a full dovetail at this corner sheds it", "une queue d’aronde complète à cet angle la rejette"},
    {"a full dovetail at this corner sheds it: [[corner]] between = [\"%1\", \"%2\"], kind = \"full "
     "dovetail\"",
     "une queue d’aronde complète à cet angle la rejette : [[corner]] between = [\"%1\", \"%2\"], kind = "
     "\"full dovetail\""},
    {"a half dovetail at this corner sheds it", "une demi-queue d’aronde à cet angle la rejette"},
    {"a half dovetail at this corner sheds it: [[corner]] between = [\"%1\", \"%2\"], kind = \"half "
     "dovetail\"",
     "une demi-queue d’aronde à cet angle la rejette : [[corner]] between = [\"%1\", \"%2\"], kind = \"half "
     "dovetail\""},
    {"a straight stick out of it, as it is drawn, is that much thinner",
     "un bois droit tiré d’elle, tel qu’il est dessiné, est mince d’autant"},
    {"change what is cut from it", "changez ce qui en est coupé"},
    {"did you mean %1?", "vouliez-vous dire %1 ?"},
    {"it cannot be lowered into place past %1", "elle ne peut descendre en place devant %1"},
    {"its cuts leave no sound piece of wood", "ses coupes ne laissent pas de pièce de bois saine"},
    {"its middle stands %1 out of the line between its ends, and the gap is %2: laid crown up it clears the "
     "log over it",
     "son milieu sort de %1 de la ligne de ses bouts, et le jeu est de %2 : posée bombé en haut elle passe "
     "sous la pièce du dessus"},
    {"its middle stands %1 out of the line between its ends, and the gap is %2: laid crown up it touches the "
     "log over it by %3",
     "son milieu sort de %1 de la ligne de ses bouts, et le jeu est de %2 : posée bombé en haut elle touche "
     "la pièce du dessus de %3"},
    {"its tails do not lock", "ses queues ne verrouillent pas"},
    {"its tails do not lock and there are no pegs: the logs can pull out",
     "ses queues ne verrouillent pas et il n’y a pas de chevilles : les pièces peuvent sortir"},
    {"known are %1", "sont connues %1"},
    {"logs that come down further press on the frame. Local code and a licensed professional decide",
     "des pièces qui descendent davantage pèsent sur le cadre. Le code local et un professionnel agréé "
     "décident"},
    {"no dovetail of this slope sheds it there", "aucune queue d’aronde de cette pente ne l’y rejette"},
    {"no dovetail of this slope sheds it there without another warning",
     "aucune queue d’aronde de cette pente ne l’y rejette sans un autre avertissement"},
    {"no species is stated: weights and spans are worked out for %1",
     "aucune essence n’est indiquée : poids et portées sont calculés pour %1"},
    {"no values are known for the species \"%1\"", "aucune valeur n’est connue pour l’essence « %1 »"},
    {"no values are known for the species \"%1\", which %2 places of this shell have",
     "aucune valeur n’est connue pour l’essence « %1 », que portent %2 endroits de cette coque"},
    {"of the log over it, %1, %2 are left to carry over %3. What it carries is not worked out here: local "
     "code and a licensed professional decide",
     "de la pièce au-dessus, %1, il reste %2 pour porter sur %3. Ce qu’il porte n’est pas calculé ici : le "
     "code local et un professionnel agréé décident"},
    {"of the log over it, %1, nothing is left to carry over %2: an opening over it cuts it through by %3. "
     "Local code and a licensed professional decide",
     "de la pièce au-dessus, %1, il ne reste rien pour porter sur %2 : une ouverture au-dessus la traverse "
     "de %3. Le code local et un professionnel agréé décident"},
    {"only the pegs hold the logs from pulling out", "seules les chevilles empêchent les pièces de sortir"},
    {"the corner's own notch sheds it", "l’entaille propre à l’angle la rejette"},
    {"the log over it, %1, runs only %2 past its %3 jamb",
     "la pièce au-dessus, %1, ne dépasse que de %2 son jambage %3"},
    {"the settling rule stated, %1, leaves %2 over the frame in an opening %3 high, where %4 asks for %5, "
     "which is taken for such walls where none is stated",
     "la règle de tassement indiquée, %1, laisse %2 au-dessus du cadre d’une ouverture de %3 de haut, là où "
     "%4, prise pour de tels murs quand rien n’est indiqué, demande %5"},
    {"the space stated over its frame, %1, is less than the %2 of %3",
     "l’espace indiqué au-dessus de son cadre, %1, est moindre que les %2 de %3"},
    {"the space stated over its frame, %1, leaves a frame of %2 in a height of %3",
     "l’espace indiqué au-dessus de son cadre, %1, laisse un cadre de %2 dans une hauteur de %3"},
    {"the space stated over its frame, %1, leaves nothing of its height of %2",
     "l’espace indiqué au-dessus de son cadre, %1, ne laisse rien de sa hauteur de %2"},
    {"these two pieces share as much wood as a cube of %1",
     "ces deux pièces partagent autant de bois qu'un cube de %1"},
    {"water that reaches the tops of wall %1's tails runs in along the crossing log, to wall %2's inside "
     "face",
     "l’eau qui atteint le dessus des queues du mur %1 entre le long de la pièce croisée, vers la face "
     "intérieure du mur %2"},
    {"water that reaches the tops of wall %1's tails runs in along the log, to wall %2's inside face",
     "l’eau qui atteint le dessus des queues du mur %1 entre le long de la pièce, vers la face intérieure du "
     "mur %2"},
};

} // namespace

std::span<const Entry> french_of_review() {
    return entries;
}

} // namespace roundlay
