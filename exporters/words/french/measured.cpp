// Of a house as it was measured: what a record and the plan under it do not agree in.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 numbers of the record are in the model, %2 more are proposed by the rules of the plan",
     "%1 nombres du relevé sont dans le modèle, %2 autres sont proposés par les règles du plan"},
    {"%1 {gap under a notch of a round log is|gaps under notches of round logs are} recorded and not in the "
     "model: they are scribed to one another",
     "%1 {jour sous une entaille de bois rond est relevé et absent|jours sous les entailles de bois ronds "
     "sont relevés et absents} du modèle : ils sont tracés l’un sur l’autre"},
    {"%1 {lean of a corner is|leans of corners are} recorded and not in the model: its walls stand upright",
     "%1 dévers {d’angle est relevé et n’est pas|d’angles sont relevés et ne sont pas} dans le modèle : ses "
     "murs y sont d’aplomb"},
    {"%1 {level of a corner is|levels of corners are} recorded and not in the model: it lies by the levels "
     "of its logs",
     "%1 {niveau d’angle est relevé et n’est pas|niveaux d’angles sont relevés et ne sont pas} dans le "
     "modèle : il est posé selon les niveaux de ses pièces"},
    {"%1 {level of a round log is|levels of round logs are} recorded and not in the model: they lie by their "
     "diameters",
     "%1 {niveau de rondin est relevé et n’est pas|niveaux de rondins sont relevés et ne sont pas} dans le "
     "modèle : ils sont posés selon leurs diamètres"},
    {"%1 {wind of a log is|winds of logs are} recorded and not in the model: its logs are not twisted",
     "%1 {gauchissement de pièce est relevé et n’est pas|gauchissements de pièces sont relevés et ne sont "
     "pas} dans le modèle : ses pièces n’y sont pas gauches"},
    {"as they were measured, walls %1 and %2 run off one another by more than 1 in 50, and timbers between "
     "such walls are not worked out: floor %3 is not in the model",
     "tels qu’ils ont été mesurés, les murs %1 et %2 s’écartent l’un de l’autre de plus de 1 pour 50, et les "
     "bois entre de tels murs ne sont pas calculés : le plancher %3 n’est pas dans le modèle"},
    {"between its ends it was measured %1 high where a straight log is %2: the model has the straight one",
     "entre ses bouts elle a été mesurée haute de %1 là où une pièce droite fait %2 : le modèle a la droite"},
    {"by the levels its end at corner %1 reaches %2 into what lies under it: it is laid on it, without a gap",
     "d’après les niveaux, son bout à l’angle %1 entre de %2 dans ce qui est dessous : elle y est posée, "
     "sans joint"},
    {"by what was measured it would reach from %1 to %2: it stays as it is stated",
     "d’après les mesures elle irait de %1 à %2 : elle reste comme indiquée"},
    {"give each opening a name of its own", "donnez à chaque ouverture son propre nom"},
    {"it is carried along with the logs that it lies in: these are lifted unevenly, and its timbers, which "
     "lie level, then lie up to %1 higher or lower in them than they were drawn",
     "il suit les pièces dans lesquelles il repose : celles-ci sont levées inégalement, et ses bois, qui "
     "sont de niveau, s’y trouvent alors jusqu’à %1 plus haut ou plus bas que dessinés"},
    {"it stands on a step of the foundation: its tails are cut by the rule",
     "il repose sur un redan de la fondation : ses queues sont taillées selon la règle"},
    {"it was measured %1 high, and by its levels it is %2, a difference of %3: the levels are taken",
     "elle a été mesurée haute de %1, et par ses niveaux elle fait %2, soit %3 d’écart : les niveaux sont "
     "retenus"},
    {"it was measured %1 wide, and by its jambs it is %2, a difference of %3: the jambs are taken",
     "elle a été mesurée large de %1, et par ses jambages elle fait %2, soit %3 d’écart : les jambages sont "
     "retenus"},
    {"it was measured %1, the plan that fits all that was measured best has %2 there",
     "il a été mesuré à %1, le plan qui s’accorde le mieux avec toutes les mesures y a %2"},
    {"its end at corner %1 lies %2 higher than its level and its height say: what lies under it was not "
     "measured there, and what is proposed of that reaches so high",
     "son bout à l’angle %1 est %2 plus haut que ne le disent son niveau et sa hauteur : ce qui est dessous "
     "n’y a pas été mesuré, et ce qui en est proposé monte jusque-là"},
    {"its four heights lie in no plane: the nearest one is %1 off each of them",
     "ses quatre hauteurs ne sont pas dans un plan : le plus proche s’écarte de chacune de %1"},
    {"its jamb further from corner %1 was measured %2 from it at the sill and %3 at the head: the model has "
     "it upright, in the middle",
     "son jambage le plus loin de l’angle %1 a été mesuré à %2 de celui-ci à l’appui et à %3 au linteau : le "
     "modèle l’a d’aplomb, au milieu"},
    {"its jamb nearer to corner %1 was measured %2 from it at the sill and %3 at the head: the model has it "
     "upright, in the middle",
     "son jambage le plus proche de l’angle %1 a été mesuré à %2 de celui-ci à l’appui et à %3 au linteau : "
     "le modèle l’a d’aplomb, au milieu"},
    {"its jambs were measured from corner %1, which is no end of wall %2: they are not in the model",
     "ses jambages ont été mesurés depuis l’angle %1, qui n’est pas un bout du mur %2 : ils ne sont pas dans "
     "le modèle"},
    {"its jambs were measured, and not from which corner: they are not in the model",
     "ses jambages ont été mesurés, sans dire depuis quel angle : ils ne sont pas dans le modèle"},
    {"its levels are not in the model: none was read of a log of the first round, and nothing tells how high "
     "it lies over that",
     "ses niveaux ne sont pas dans le modèle : aucun n’a été lu d’une pièce du premier rang, et rien ne dit "
     "de combien elle est au-dessus"},
    {"its levels are not in the model: nothing says which level plane they were read from",
     "ses niveaux ne sont pas dans le modèle : rien ne dit depuis quel plan de niveau ils ont été lus"},
    {"its sill lies %1 under the lowest log by its level: it is set on the foundation",
     "son appui est à %1 sous la pièce la plus basse d’après son niveau : elle est posée sur la fondation"},
    {"its widest log comes to %1 by what was measured, more than the %2 stated: the wall is made that thick, "
     "and logs whose width nobody measured stay as wide as stated",
     "sa pièce la plus large fait %1 d’après les mesures, plus que les %2 indiqués : le mur prend cette "
     "épaisseur, et les pièces dont personne n’a mesuré la largeur gardent celle qui est indiquée"},
    {"leave out \"levelled\", and state what packs each first log up by gap_left and gap_right",
     "retirez « levelled », et indiquez par gap_left et gap_right ce qui cale chaque première pièce"},
    {"leave out the gaps under it, its tails and its scribe",
     "omettez les joints dessous, ses queues et son écart"},
    {"levels were read, but none of a log of the first round: nothing tells how high the others lie",
     "des niveaux ont été relevés, mais aucun d’une pièce du premier rang : rien ne dit à quelle hauteur "
     "sont les autres"},
    {"log %1: beside opening %2 it was measured %3 high where a straight log is %4: the model has the "
     "straight one",
     "pièce %1 : à côté de l’ouverture %2 elle a été mesurée haute de %3 là où une pièce droite fait %4 : le "
     "modèle a la droite"},
    {"log %1: beside opening %2 it was measured %3 wide where a straight log is %4: the model has the "
     "straight one",
     "pièce %1 : à côté de l’ouverture %2 elle a été mesurée large de %3 là où une pièce droite fait %4 : le "
     "modèle a la droite"},
    {"log %1: beside opening %2 its upper edge lies %3 over the lowest log by its level, in the model that "
     "is %4",
     "pièce %1 : à côté de l’ouverture %2 son arête supérieure est à %3 au-dessus de la pièce la plus basse "
     "d’après son niveau, dans le modèle à %4"},
    {"log %1: between its ends it was measured %2 high, and the plan has %3 there",
     "pièce %1 : entre ses bouts elle est mesurée haute de %2, et le plan y a %3"},
    {"log %1: between its ends it was measured %2 wide, and the plan has %3 there",
     "pièce %1 : entre ses bouts elle est mesurée large de %2, et le plan y a %3"},
    {"log %1: between its shoulders it was measured %2, in the model that is %3",
     "pièce %1 : entre ses épaulements elle a été mesurée à %2, dans le modèle cela fait %3"},
    {"log %1: its height at %2 was measured %3, and the plan has %4 there",
     "pièce %1 : sa hauteur en %2 est mesurée à %3, et le plan y a %4"},
    {"log %1: its length over all was measured %2, in the model it is %3 long",
     "pièce %1 : sa longueur hors tout a été mesurée à %2, dans le modèle elle est longue de %3"},
    {"log %1: its width at %2 was measured %3, and the plan has %4 there",
     "pièce %1 : sa largeur en %2 est mesurée à %3, et le plan y a %4"},
    {"log %1: up to opening %2 it was measured %3 over all, and as the opening was measured it is %4, a "
     "difference of %5",
     "pièce %1 : jusqu’à l’ouverture %2 elle a été mesurée de %3 hors tout, et d’après l’ouverture mesurée "
     "elle fait %4, soit %5 d’écart"},
    {"measure both again", "mesurez les deux de nouveau"},
    {"measure heights and levels of the logs under it", "mesurez hauteurs et niveaux des pièces dessous"},
    {"measure it again, and look whether the log lies in this round",
     "mesurez-la de nouveau, et voyez si la pièce se trouve bien à ce rang"},
    {"measure it again, and look which corner and plane it was measured from",
     "mesurez-la de nouveau, et voyez depuis quel angle et quel plan elle a été mesurée"},
    {"measure it again, and the diagonals", "mesurez-le de nouveau, et les diagonales"},
    {"measure it again, or mend the walls, overhangs and openings of the plan",
     "mesurez-la de nouveau, ou corrigez les murs, les dépassements et les ouvertures du plan"},
    {"measure its height and the level of its upper edge again",
     "mesurez de nouveau sa hauteur et le niveau de son arête supérieure"},
    {"measure the log and the jamb again", "mesurez de nouveau la pièce et le jambage"},
    {"measure the walls and diagonals again; where they stand so, lay its timbers out by hand",
     "mesurez de nouveau les murs et les diagonales ; s’ils sont bien ainsi, tracez ses bois à la main"},
    {"measure where its timbers lie in their logs before pockets are cut",
     "mesurez où ses bois reposent dans leurs pièces avant de tailler des mortaises"},
    {"mend what the check says of them first", "corrigez d’abord ce que la vérification en dit"},
    {"name a plane of the record, with its offset", "nommez un plan du relevé, avec son décalage"},
    {"opening %1 of wall %2 was measured, and the plan has none of that name there: its numbers are not in "
     "the model",
     "l’ouverture %1 du mur %2 a été mesurée, et le plan n’y en a aucune de ce nom : ses nombres ne sont pas "
     "dans le modèle"},
    {"opening %1 was measured, and the plan has %2 of that name: its numbers are not in the model",
     "l’ouverture %1 a été mesurée, et le plan en a %2 de ce nom : ses nombres ne sont pas dans le modèle"},
    {"opening %1 was measured, and the plan has none of that name: its numbers are not in the model",
     "l’ouverture %1 a été mesurée, et le plan n’en a aucune de ce nom : ses nombres ne sont pas dans le "
     "modèle"},
    {"put it into the plan by eye, or mend its name", "mettez-la dans le plan à l’œil, ou corrigez son nom"},
    {"read its level again, and those of the logs of the first round",
     "relevez de nouveau son niveau, et ceux des pièces du premier rang"},
    {"read the level and the height of a first log at its ends",
     "relevez le niveau et la hauteur d’une première pièce à ses bouts"},
    {"read the level of a first log at its two ends",
     "relevez le niveau d’une première pièce à ses deux bouts"},
    {"read the level of the upper edge of a first log there, and its height",
     "relevez-y le niveau de l’arête supérieure d’une première pièce, et sa hauteur"},
    {"state the corner at one end of the wall as its zero", "indiquez comme zéro l’angle à un bout du mur"},
    {"take the steps out of this state (gone = true) and state the logs that come under what stood on them; "
     "or leave out \"levelled\"",
     "retirez les redans de cet état (gone = true) et indiquez les pièces qui viennent sous ce qui s’y "
     "appuyait ; ou retirez « levelled »"},
    {"the corner is lifted by %1, with every log that ends in it: so far it had sunk below the highest one",
     "l’angle est levé de %1, avec toutes les pièces qui y aboutissent : d’autant il s’était affaissé sous "
     "le plus haut"},
    {"the gap under it is %1 as measured on log %2 and %3 on log %4, a difference of %5: the middle is taken",
     "le joint dessous est de %1 selon la mesure sur la pièce %2 et de %3 sur la pièce %4, une différence de "
     "%5 : le milieu est retenu"},
    {"the house cannot be put level: its foundation has steps, and what stood on them would have to be cut "
     "or to be built up",
     "la maison ne peut pas être mise de niveau : sa fondation a des redans, et ce qui s’y appuyait devrait "
     "être coupé ou rehaussé"},
    {"the house cannot be put level: nothing tells how far it has sunk at corner %1",
     "la maison ne peut pas être mise de niveau : rien ne dit de combien elle s’est affaissée à l’angle %1"},
    {"the house cannot be put level: where walls %1 and %2 cross, the one would be lifted %3 more than the "
     "other, for logs stay straight",
     "la maison ne peut pas être mise de niveau : là où les murs %1 et %2 se croisent, l’un serait levé de "
     "%3 de plus que l’autre, car les pièces restent droites"},
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
