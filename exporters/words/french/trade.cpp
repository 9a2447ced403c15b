// Of what weights, settling and spans rest on.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1", "%1"},
    {"%1 (%2 logs in wall %3)", "%1 (%2 pièces dans le mur %3)"},
    {"%1 (%2 logs in walls %3)", "%1 (%2 pièces dans les murs %3)"},
    {"%1 (%2), though %3", "%1 (%2), même si %3"},
    {"%1 (%2; %3, %4), %5", "%1 (%2 ; %3, %4), %5"},
    {"%1 No species is stated: eastern hemlock is taken.",
     "%1 Aucune essence n’est indiquée : la pruche du Canada est prise."},
    {"%1 Round logs: Smalian's volume of the least small end, growing 1/2 in per 4 ft to the butt, without "
     "bark. %2",
     "%1 Bois ronds : volume de Smalian du moindre petit bout, croissant de 1/2 po par 4 pi vers le gros "
     "bout, sans écorce. %2"},
    {"%1 high", "hauteur %1"},
    {"%1 high (%2 by its rounds)", "hauteur %1 (%2 d’après ses rangs)"},
    {"%1 in wall %2", "%1 du mur %2"},
    {"%1 round", "%1 rang"},
    {"%1 rounds", "%1 rangs"},
    {"%1 to %2 high (%3 by its rounds)", "hauteur %1 à %2 (%3 d’après ses rangs)"},
    {"%1, %2, though %3", "%1, %2, même si %3"},
    {"%1, and no more than wood of the higher specific gravity weighs with all hollows full of water (Eq. "
     "4-3)",
     "%1, et pas plus que ne pèse du bois de la densité la plus forte dont tous les vides sont pleins d’eau "
     "(éq. 4-3)"},
    {"%1, green", "%1, vert"},
    {"%1.%2", "%1,%2"},
    {"%1: volume x 1000 kg/m3 x specific gravity x (1 + moisture/100), Wood Handbook (second-hand) Eq. 4-13 "
     "and 4-14; specific gravity %2 from %3; %4, 10 % to either side (coefficient of variation of specific "
     "gravity, Wood Handbook chapter 5, from memory); the moisture of single logs varies more.",
     "%1 : volume x 1000 kg/m3 x densité x (1 + humidité/100), Wood Handbook (de seconde main) éq. 4-13 et "
     "4-14 ; densité %2 d’après %3 ; %4, 10 % de part et d’autre (coefficient de variation de la densité, "
     "Wood Handbook, chapitre 5, de mémoire) ; l’humidité d’une pièce varie davantage."},
    {"%1; %2", "%1 ; %2"},
    {"%1; by %2 it would be %3", "%1 ; par %2, ce serait %3"},
    {"%1; the higher weight is by %2, the heavier of them",
     "%1 ; le poids supérieur est selon %2, la plus lourde des deux"},
    {"13 mm for each 300 mm of height", "13 mm par 300 mm de hauteur"},
    {"3/16 in for each log of 12 in with its chink of 4 in",
     "3/16 po par pièce de 12 po avec son joint de 4 po"},
    {"60 mm per metre; also quoted as 3/4 in per foot", "60 mm par mètre ; aussi cité comme 3/4 po par pied"},
    {"A screen by textbook formulas, never an approval: loads, grade, notches and bearings are for local "
     "code and a licensed professional to decide.",
     "Une vérification par formules de manuel, jamais une approbation : charges, classe, entailles et appuis "
     "sont à décider par le code local et un professionnel agréé."},
    {"Each span as a simple one from middle to middle of its bearings, which is no less than its clear span "
     "and half the bearing needed at each end (NDS 3.2.1, from memory), least section: deflection 5 w L^4 / "
     "(384 E I) for even loads and P b (L^2 - b^2)^1.5 / (9 sqrt(3) L E I) for single ones under the live "
     "load; stresses under the whole load: M / S and 3 V / (2 b h) (Wood Handbook chapter 9, second-hand), "
     "less the housings cut in it; at notched ends 3 V / (2 b dn) x (d / dn)^2 (NDS 2018, 3.4.3.2, "
     "second-hand), at tailed ends over the neck; bearing R / (b x bearing). Over a beam two neighbouring "
     "spans are taken as one that runs on, so the beam carries 1.25 w L of equal ones (statics, derived). "
     "Beams, trimmers and joists beside openings carry what the others lay on them. No allowable stress is "
     "published for logs of this wood, hewn and graded by eye, so none stands beside the stresses: whether "
     "they may be allowed is for a licensed person to judge, by the grade's design values.",
     "Chaque portée comme simple, du milieu au milieu de ses appuis, ce qui n’est pas moins que sa portée "
     "libre et la moitié de l’appui nécessaire à chaque bout (NDS 3.2.1, de mémoire), moindre section : "
     "flèche 5 w L^4 / (384 E I) pour les charges réparties et P b (L^2 - b^2)^1,5 / (9 sqrt(3) L E I) pour "
     "les charges isolées, sous la charge d’usage ; contraintes sous toute la charge : M / S et 3 V / (2 b "
     "h) (Wood Handbook, chapitre 9, de seconde main), moins les mortaises qui y sont taillées ; aux bouts "
     "entaillés 3 V / (2 b dn) x (d / dn)^2 (NDS 2018, 3.4.3.2, de seconde main), aux bouts en queue sur le "
     "col ; appui R / (b x appui). Sur une poutre, deux portées voisines sont prises comme une pièce "
     "continue : la poutre porte 1,25 w L de portées égales (statique, calculé). Poutres, chevêtres et "
     "solives au bord des trémies portent ce que les autres y posent. Aucune contrainte admissible n’est "
     "publiée pour des rondins de ce bois, équarris et classés à l’œil : aucune ne figure donc à côté des "
     "contraintes ; si elles sont admissibles, c’est à une personne agréée d’en juger, par les valeurs de "
     "calcul de la classe."},
    {"Loads: %1; and each timber's own weight, at the high end. E %2 is a mean of small clear green %3, no "
     "design value: sticks with knots bend more (%4).",
     "Charges : %1 ; et le poids propre de chaque pièce, pris haut. E %2 est une moyenne de petites "
     "éprouvettes sans défaut, vertes, de %3, pas une valeur de calcul : le bois noueux fléchit davantage "
     "(%4)."},
    {"Ontario Building Code, O. Reg. 332/12, Division B, section 9.37",
     "code du bâtiment de l’Ontario, règl. 332/12, division B, section 9.37"},
    {"Settling spaces follow the rule named, which may not be your local one; local code and a licensed "
     "professional decide.",
     "Les espaces de tassement suivent la règle nommée, qui n’est peut-être pas celle de votre lieu ; le "
     "code local et un professionnel agréé décident."},
    {"Weights are estimates from average values of the species, no lift plan: single logs are heavier or "
     "lighter, and rain and snow add. Weigh before lifting near a limit; local rules and a licensed "
     "professional decide.",
     "Les poids sont estimés d’après les moyennes de l’essence, ce n’est pas un plan de levage : une pièce "
     "peut peser plus ou moins, pluie et neige s’ajoutent. Pesez avant de lever près d’une limite ; les "
     "règles locales et un professionnel agréé décident."},
    {"a clear-wood table of the ASTM D2555 kind gives 0.39 green",
     "une table de bois sans défaut du genre ASTM D2555 donne 0,39 à l’état vert"},
    {"a newspaper article of 1999, a rule of thumb", "un article de journal de 1999, une règle empirique"},
    {"about 4 cm per metre", "environ 4 cm par mètre"},
    {"an unsourced table gives 10.8 % tangential, which is the chestnut oak's figure",
     "une table sans source donne 10,8 % en tangentiel, ce qui est le chiffre du chêne châtaignier"},
    {"as stated for all openings; by %1 it would be %2",
     "comme indiqué pour toutes les ouvertures ; par %1, ce serait %2"},
    {"as stated for this opening; by %1 it would be %2",
     "comme indiqué pour cette ouverture ; par %1, ce serait %2"},
    {"as the document says of all openings", "comme le dit le document de toutes les ouvertures"},
    {"as the document says of this opening", "comme le dit le document de cette ouverture"},
    {"as the logs are not round ones scribed over one another; it is a code's least, for dry wood too",
     "car les pièces ne sont pas rondes et tracées l’une sur l’autre ; c’est le moindre d’un code, pour le "
     "bois sec aussi"},
    {"as the logs are round and scribed, and not stated to be seasoned",
     "car les pièces sont rondes et tracées, et rien ne dit qu’elles soient sèches"},
    {"as the logs are round and scribed, but stated at 19 % of moisture or less",
     "car les pièces sont rondes et tracées, mais indiquées à 19 % d’humidité ou moins"},
    {"at the stated moisture of %1 %, at which that is %2 (Eq. 4-13)",
     "à l’humidité indiquée de %1 %, à laquelle elle est de %2 (éq. 4-13)"},
    {"beam", "poutre"},
    {"bolt", "boulon"},
    {"derived", "calculé"},
    {"east", "est"},
    {"floor %1 live %2, dead %3", "plancher %1 usage %2, permanente %3"},
    {"floor %1 live %2, dead %3 (none is stated, so 10 lb/ft2 rounded up is taken)",
     "plancher %1 usage %2, permanente %3 (aucune n’est indiquée : 10 lb/pi2 arrondis vers le haut sont "
     "pris)"},
    {"fresh log walls", "murs de bois frais"},
    {"from boards measured at %1 % (%2) to sapwood at %3 % by %4",
     "des planches mesurées à %1 % (%2) à l’aubier à %3 % selon %4"},
    {"from heartwood at %1 % (%2) to all hollows full of water at %3 % (Eq. 4-3), as none is published for "
     "sapwood",
     "du bois de cœur à %1 % (%2) à tous les vides pleins d’eau à %3 % (éq. 4-3), rien n’étant publié pour "
     "l’aubier"},
    {"from heartwood at %1 % to sapwood at %2 % by %3", "du bois de cœur à %1 % à l’aubier à %2 % selon %3"},
    {"from memory", "de mémoire"},
    {"green round logs, scribed", "bois ronds verts, tracés"},
    {"hewn", "équarrie"},
    {"hewn chinked walls", "murs équarris jointoyés"},
    {"hole", "trou"},
    {"joist", "solive"},
    {"kept", "conservée"},
    {"least clearance above openings in walls of horizontal logs that can shrink",
     "jeu minimal au-dessus des ouvertures dans des murs de pièces horizontales sujettes au retrait"},
    {"log building standards of 2000 for scribed round logs, settling",
     "normes de construction en bois rond tracé de 2000, tassement"},
    {"new", "neuve"},
    {"no green moisture is published for it, so from fibre saturation at 30 % to all hollows full of water "
     "at %1 % (Eq. 4-3)",
     "aucune humidité à l’état vert n’est publiée : de la saturation des fibres à 30 % à tous les vides "
     "pleins d’eau à %1 % (éq. 4-3)"},
    {"no values are known for the species \"%1\"; %2",
     "aucune valeur n’est connue pour l’essence « %1 » ; %2"},
    {"no weight: %1", "aucun poids : %1"},
    {"none published for such logs: a licensed person judges",
     "aucune publiée pour de tels rondins : une personne agréée juge"},
    {"north", "nord"},
    {"north-east", "nord-est"},
    {"north-west", "nord-ouest"},
    {"not known: no values are known of the wood of %1 pieces, of which %2 is the first. Weigh before "
     "lifting.",
     "inconnu : aucune valeur n’est connue du bois de %1 pièces, dont la première est %2. Pesez avant de "
     "lever."},
    {"not known: no values are known of the wood of %1. Weigh before lifting.",
     "inconnu : aucune valeur n’est connue du bois de %1. Pesez avant de lever."},
    {"older US tables give 4.7, 8.2 and 13.7 %, Canadian ones about 3.2, 6.9 and 11.3 %",
     "des tables américaines plus anciennes donnent 4,7 ; 8,2 et 13,7 %, des canadiennes environ 3,2 ; 6,9 "
     "et "
     "11,3 %"},
    {"older editions give 34 and 128 % for the eastern spruces together",
     "des éditions plus anciennes donnent 34 et 128 % aux épinettes de l’Est ensemble"},
    {"patched", "réparée"},
    {"peeled", "écorcée"},
    {"peg", "cheville"},
    {"repair card of the Finnish heritage agency on moving log houses",
     "fiche de réparation de l’agence finlandaise du patrimoine sur le déplacement des maisons de bois"},
    {"replacement", "de remplacement"},
    {"rod", "tirant"},
    {"sawn", "sciée"},
    {"second-hand", "de seconde main"},
    {"seen", "vu"},
    {"some older tables give 110 % for sapwood", "des tables plus anciennes donnent 110 % pour l’aubier"},
    {"some tables give white spruce 0.37 and 0.40 and Sitka spruce 0.33 and 0.36: the two rows may be "
     "exchanged",
     "des tables donnent 0,37 et 0,40 à l’épinette blanche et 0,33 et 0,36 à l’épinette de Sitka : les deux "
     "lignes sont peut-être échangées"},
    {"south", "sud"},
    {"south-east", "sud-est"},
    {"south-west", "sud-ouest"},
    {"trimmed joist", "solive boiteuse"},
    {"trimmer", "chevêtre"},
    {"west", "ouest"},
    {"wiring", "câblage"},
    {"wiring %1", "câblage %1"},
};

} // namespace

std::span<const Entry> french_of_trade() {
    return entries;
}

} // namespace roundlay
