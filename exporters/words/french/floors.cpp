// Of floors and their timbers.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 N", "%1 N"},
    {"%1 at least", "%1 au moins"},
    {"%1 at most would", "%1 au plus le ferait"},
    {"%1 comes too near another opening of this floor",
     "%1 vient trop près d’une autre trémie de ce plancher"},
    {"%1 cuts %2 away under it", "%1 enlève %2 par-dessous"},
    {"%1 lb", "%1 lb"},
    {"%1 leaves no room for a joist or trimmer beside it",
     "%1 ne laisse pas place à une solive ou un chevêtre à côté"},
    {"%1 meets a wall that stands in the room", "%1 rencontre un mur dans la pièce"},
    {"%1 pulls up with %2 where the load lies on the spans that lift it, and nothing but its weight holds it "
     "down",
     "%1 tire vers le haut de %2 quand la charge est sur les portées qui la soulèvent, et rien que son poids "
     "ne la retient"},
    {"%1 reaches %2 past the right side of the room, which is %3 wide along wall %4",
     "%1 dépasse de %2 le côté droit de la pièce, large de %3 le long du mur %4"},
    {"%1 reaches %2 past the right side of the room, which is %3 wide along wall %4, and %5 past wall %6, "
     "which lies %7 from it",
     "%1 dépasse de %2 le côté droit de la pièce, large de %3 le long du mur %4, et de %5 le mur %6, qui en "
     "est à %7"},
    {"%1 reaches %2 past wall %3, which lies %4 from wall %5",
     "%1 dépasse de %2 le mur %3, qui est à %4 du mur %5"},
    {"%1 reaches into the room and stands in its way", "%1 entre dans la pièce et lui barre le passage"},
    {"%1, %2 of its height, is the deepest that a code lets joists be notched (IRC R502.8.1, second-hand), "
     "and local code decides",
     "%1, %2 de sa hauteur, est l’entaille la plus profonde qu’un code permette aux solives (IRC R502.8.1, "
     "de seconde main), et le code local décide"},
    {"38 mm (1 1/2 in) is the least that codes ask for (Ontario Building Code; IRC R502.6, from memory), and "
     "local code decides",
     "38 mm (1 1/2 po) est le moins que demandent les codes (Code du bâtiment de l’Ontario ; IRC R502.6, de "
     "mémoire), et le code local décide"},
    {"a %1th part (IRC R301.7, from memory) is %2. A screen only: local code and a licensed professional "
     "decide",
     "le %1ᵉ (IRC R301.7, de mémoire) est %2. Une simple vérification : le code local et un professionnel "
     "agréé décident"},
    {"a beam %1 from wall %2 crosses a floor opening or its trimmers",
     "une poutre à %1 du mur %2 croise une trémie ou ses chevêtres"},
    {"a beam %1 from wall %2 lies in a wall", "une poutre à %1 du mur %2 est dans un mur"},
    {"a beam of it carries no joist", "une de ses poutres ne porte aucune solive"},
    {"a bearing of %1 does not leave %2 of a wall %3 thick",
     "un appui de %1 ne laisse pas %2 d’un mur épais de %3"},
    {"a floor opening", "une trémie"},
    {"a level of %1 at most lays them on its last log",
     "un niveau de %1 au plus les pose sur sa dernière pièce"},
    {"a quarter", "le quart"},
    {"a sixth", "le sixième"},
    {"a smaller tail or bearing leaves half of it", "une queue ou un appui plus petit en laisse la moitié"},
    {"an end of it", "un de ses bouts"},
    {"an end of it bears on %1 of wood", "un bout porte sur %1 de bois"},
    {"at %1 from wall %2 it fits", "à %1 du mur %2 elle tient"},
    {"at %1 it passes beside", "à %1 elle passe à côté"},
    {"at %1 its joists lie %2 over the top of wall %3, which is %4 high",
     "à %1 ses solives sont %2 au-dessus du mur %3, qui est haut de %4"},
    {"at %1 or at %2 from wall %3 it fits", "à %1 ou à %2 du mur %3 elle tient"},
    {"at %1 or at %2 it passes beside", "à %1 ou à %2 elle passe à côté"},
    {"between %1 and %2 it fits", "entre %1 et %2 elle tient"},
    {"from wall %1 to wall %2 it fits", "du mur %1 au mur %2 il tient"},
    {"it would bend %1 under the live load over a span of %2",
     "elle fléchirait de %1 sous la charge d’usage sur une portée de %2"},
    {"its end", "son bout"},
    {"its end in %1", "son bout dans %1"},
    {"its end in %1 comes too near the end of a log of round %2",
     "son bout dans %1 vient trop près du bout d’une pièce du rang %2"},
    {"its end in %1 finds no log there", "son bout dans %1 n’y trouve aucune pièce"},
    {"its end in %1 has no wood under it: its underside lies at the gap over round %2",
     "son bout dans %1 n’a pas de bois dessous : son dessous est au jeu sur le rang %2"},
    {"its end in %1 lies in %2", "son bout dans %1 est dans %2"},
    {"its end in %1 lies in the notches of wall %2", "son bout dans %1 est dans les entailles du mur %2"},
    {"its end in %1 lies over the wall's top", "son bout dans %1 est au-dessus du mur"},
    {"its end in %1 lies under the wall's first log", "son bout dans %1 est sous la première pièce du mur"},
    {"its pocket in %1 leaves no wood that stays up to %2",
     "sa mortaise dans %1 ne laisse pas de bois qui tienne jusqu’à %2"},
    {"its pocket in %1 leaves only %2 of wood up to %3",
     "sa mortaise dans %1 ne laisse que %2 de bois jusqu’à %3"},
    {"its pocket is closed at the top: %1 stands %2 over it, so it cannot be lowered in, only slid",
     "sa mortaise est fermée en haut : %1 la dépasse de %2, elle ne descend pas, elle glisse"},
    {"its pocket leaves only %1 of %2 under it", "sa mortaise ne laisse que %1 de %2 dessous"},
    {"its seat on %1", "son assise sur %1"},
    {"its timbers' ends in wall %1 pull up with %2 in all where the load lies on the spans that lift them, "
     "and the logs over them weigh %3 at least",
     "les bouts de ses pièces dans le mur %1 tirent vers le haut avec %2 en tout là où la charge est sur les "
     "portées qui les soulèvent, et les pièces au-dessus pèsent %3 au moins"},
    {"joists %1 wide do not lie %2 apart on centre", "des solives larges de %1 n’ont pas un entraxe de %2"},
    {"keep %1 away from it", "restez à %1"},
    {"let it reach the wall, or keep %1 away from it", "qu’elle atteigne le mur, ou restez à %1"},
    {"lower the floor by %1", "baissez le plancher de %1"},
    {"lower the floor by %1, to a level of %2", "abaissez le plancher de %1, au niveau %2"},
    {"measure where it lies: a level %1 higher would fit",
     "mesurez où il se trouve : un niveau plus haut de %1 irait"},
    {"measure where it lies: a level %1 lower would fit",
     "mesurez où il se trouve : un niveau plus bas de %1 irait"},
    {"move that, or trim the floor there", "déplacez cela, ou enchevêtrez le plancher là"},
    {"move the joists by the floor's first or spacing",
     "déplacez les solives par le premier écart ou l’entraxe"},
    {"move the opening or the floor's first joist", "déplacez l’ouverture ou la première solive"},
    {"no dead_load is stated: %1 is taken for boards and what lies on them, and the timbers' own weight on "
     "top",
     "aucune charge permanente (dead_load) n’est indiquée : %1 sont pris pour les planches et ce qu’elles "
     "portent, plus le poids propre des pièces"},
    {"no height is left for another floor: floors over one another keep %1 between their tops",
     "il ne reste pas de hauteur pour un autre plancher : des planchers l’un sur l’autre gardent %1 entre "
     "leurs dessus"},
    {"no joist fits between the sides of the room", "aucune solive ne tient entre les côtés de la pièce"},
    {"no joist lies %1 from the left of the room, where it would be in a wall: from one joist to the next it "
     "is %2 there, where %3 is stated",
     "aucune solive à %1 de la gauche de la pièce, où elle serait dans un mur : d’une solive à l’autre il y "
     "a %2 là, pour %3 indiqués"},
    {"no live_load is stated, so its timbers are not screened for span",
     "aucune charge d’usage (live_load) n’est indiquée : les portées de ses pièces ne sont pas examinées"},
    {"no other place was found for it: both its ends must lie in walls or partitions that stand square to it "
     "and reach as far as the beam",
     "aucune autre place n’a été trouvée pour elle : ses deux bouts doivent être dans des murs ou des "
     "cloisons d’équerre à elle, qui vont aussi loin qu’elle"},
    {"no small change of the floor's level mends it: a list of the seams tells how high the logs lie",
     "aucun petit changement du niveau du plancher n’y remédie : une liste des joints dit à quelle hauteur "
     "sont les pièces"},
    {"no two walls of this shell face each other", "aucuns deux murs de cette coque ne se font face"},
    {"no wall square to the beam carries its %1 end",
     "aucun mur d’équerre à la poutre ne porte son bout de %1"},
    {"nothing carries the trimmer at the opening's %1 end",
     "rien ne porte le chevêtre au bout %1 de la trémie"},
    {"raise the floor by %1", "levez le plancher de %1"},
    {"state a floor to each side of it", "indiquez un plancher de chaque côté"},
    {"the first joist, %1 from the room's side, lies in the wall",
     "la première solive, à %1 du côté de la pièce, est dans le mur"},
    {"the notches of wall %1", "les entailles du mur %1"},
    {"the tailed ends leave only %1 of a joist %2 wide at the wall",
     "les bouts à queue ne laissent que %1 d’une solive large de %2 au mur"},
    {"tie it down there. Timbers that run on over their supports: statics, equation of three moments, "
     "derived. A screen only: local code and a licensed professional decide",
     "attachez-la vers le bas à cet endroit. Pièces continues sur leurs appuis : statique, équation des "
     "trois moments, calculé. Une simple vérification : le code local et un professionnel agréé décident"},
    {"wall %1 stands in the room between walls %2 and %3",
     "le mur %1 est dans la pièce entre les murs %2 et %3"},
    {"walls %1 and %2 do not face each other: joists lie between two walls that run alike, but for 1 in 50",
     "les murs %1 et %2 ne se font pas face : les solives vont d’un mur à un autre qui lui est parallèle, à "
     "1 pour 50 près"},
    {"walls %1 and %2 do, though between them the floor does not fit as it is stated",
     "les murs %1 et %2 se font face, mais le plancher n’y tient pas tel qu’il est indiqué"},
};

} // namespace

std::span<const Entry> french_of_floors() {
    return entries;
}

} // namespace roundlay
