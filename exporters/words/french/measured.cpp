// Of a house as it was measured: what a record and the plan under it do not agree in.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 numbers of the record are in the model, %2 more are proposed by the rules of the plan",
     "%1 nombres du relevé sont dans le modèle, %2 autres sont proposés par les règles du plan"},
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
    {"its widest log was measured %1, more than the %2 stated: the wall is made that thick",
     "sa pièce la plus large a été mesurée à %1, plus que les %2 indiqués : le mur prend cette épaisseur"},
    {"leave out the gaps under it and its tails", "omettez les joints dessous et ses queues"},
    {"levels were read, but none of a log of the first round: nothing tells how high the others lie",
     "des niveaux ont été relevés, mais aucun d’une pièce du premier rang : rien ne dit à quelle hauteur "
     "sont les autres"},
    {"measure it again, and the diagonals", "mesurez-le de nouveau, et les diagonales"},
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
