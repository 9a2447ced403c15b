// Of a house as it was measured: what a record and the plan under it do not agree in.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 gaps under tails are recorded without the tails' heights and not in the model",
     "%1 jours sous des queues sont relevés sans les hauteurs des queues et ne sont pas dans le modèle"},
    {"%1 leans of corners are recorded and not in the model: its walls stand upright",
     "%1 dévers d’angles sont relevés et ne sont pas dans le modèle : ses murs y sont d’aplomb"},
    {"%1 levels of corners are recorded and not in the model: it lies by the levels of its logs",
     "%1 niveaux d’angles sont relevés et ne sont pas dans le modèle : il est posé selon les niveaux de ses "
     "pièces"},
    {"%1 levels of round logs are recorded and not in the model: they lie by their diameters",
     "%1 niveaux de rondins sont relevés et ne sont pas dans le modèle : ils sont posés selon leurs "
     "diamètres"},
    {"%1 numbers of the record are in the model, %2 more are proposed by the rules of the plan",
     "%1 nombres du relevé sont dans le modèle, %2 autres sont proposés par les règles du plan"},
    {"%1 winds of logs are recorded and not in the model: its logs are not twisted",
     "%1 gauchissements de pièces sont relevés et ne sont pas dans le modèle : ses pièces n’y sont pas "
     "gauches"},
    {"between its ends it was measured %1 high where a straight log is %2: the model has the straight one",
     "entre ses bouts elle a été mesurée haute de %1 là où une pièce droite fait %2 : le modèle a la droite"},
    {"by the levels its end at corner %1 reaches %2 into what lies under it: it is laid on it, without a gap",
     "d’après les niveaux, son bout à l’angle %1 entre de %2 dans ce qui est dessous : elle y est posée, "
     "sans joint"},
    {"it stands on a step of the foundation: its tails are cut by the rule",
     "il repose sur un redan de la fondation : ses queues sont taillées selon la règle"},
    {"it was measured %1, the plan that fits all that was measured best has %2 there",
     "il a été mesuré à %1, le plan qui s’accorde le mieux avec toutes les mesures y a %2"},
    {"its four heights lie in no plane: the nearest one is %1 off each of them",
     "ses quatre hauteurs ne sont pas dans un plan : le plus proche s’écarte de chacune de %1"},
    {"its widest log comes to %1 by what was measured, more than the %2 stated: the wall is made that thick, "
     "and logs whose width nobody measured stay as wide as stated",
     "sa pièce la plus large fait %1 d’après les mesures, plus que les %2 indiqués : le mur prend cette "
     "épaisseur, et les pièces dont personne n’a mesuré la largeur gardent celle qui est indiquée"},
    {"leave out the gaps under it, its tails and its scribe",
     "omettez les joints dessous, ses queues et son écart"},
    {"levels were read, but none of a log of the first round: nothing tells how high the others lie",
     "des niveaux ont été relevés, mais aucun d’une pièce du premier rang : rien ne dit à quelle hauteur "
     "sont les autres"},
    {"log %1: beside opening %2 it was measured %3 high where a straight log is %4: the model has the "
     "straight one",
     "pièce %1 : à côté de l’ouverture %2 elle a été mesurée haute de %3 là où une pièce droite fait %4 : le "
     "modèle a la droite"},
    {"log %1: between its shoulders it was measured %2, in the model that is %3",
     "pièce %1 : entre ses épaulements elle a été mesurée à %2, dans le modèle cela fait %3"},
    {"log %1: its length over all was measured %2, in the model it is %3 long",
     "pièce %1 : sa longueur hors tout a été mesurée à %2, dans le modèle elle est longue de %3"},
    {"measure it again, and the diagonals", "mesurez-le de nouveau, et les diagonales"},
    {"measure it again, or mend the walls, overhangs and openings of the plan",
     "mesurez-la de nouveau, ou corrigez les murs, les dépassements et les ouvertures du plan"},
    {"measure its height and the level of its upper edge again",
     "mesurez de nouveau sa hauteur et le niveau de son arête supérieure"},
    {"mend what the check says of them first", "corrigez d’abord ce que la vérification en dit"},
    {"read the level of a first log at its two ends",
     "relevez le niveau d’une première pièce à ses deux bouts"},
    {"the gap under it is %1 as measured on log %2 and %3 on log %4, a difference of %5: the middle is taken",
     "le joint dessous est de %1 selon la mesure sur la pièce %2 et de %3 sur la pièce %4, une différence de "
     "%5 : le milieu est retenu"},
    {"the tail was measured at %1 of its four places: it is cut by the rule",
     "la queue a été mesurée à %1 de ses quatre points : elle est taillée selon la règle"},
    {"the walls and rounds that the record is put over do not stand",
     "les murs et les rangs sur lesquels le relevé est posé ne tiennent pas"},
    {"three of them make a plane", "il en faut trois pour un plan"},
    {"under its end at corner %1 the levels leave a gap of %2, the gaps as measured %3: the levels are taken",
     "sous son bout à l’angle %1 les niveaux laissent un joint de %2, les joints mesurés %3 : les niveaux "
     "sont retenus"},
};

} // namespace

std::span<const Entry> french_of_measured() {
    return entries;
}

} // namespace roundlay
