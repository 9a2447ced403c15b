// Of the record of a house that stands: notes, logs that were found.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"\"%1\" lies past the end of the log, whose length was measured \"%2\": it is taken as it stands and "
     "drawn nowhere; look at both numbers again, and at the corner that it is told from",
     "« %1 » se trouve au-delà du bout de la pièce, dont la longueur a été mesurée « %2 » : c’est repris tel "
     "quel et n’est dessiné nulle part ; revoyez les deux nombres, et l’angle d’où c’est compté"},
    {"% of count", "% du nombre"},
    {"% of face", "% de la face"},
    {"% of volume", "% du volume"},
    {"%1 at %2", "%1 à %2"},
    {"%1 between shoulders is more than the %2 over all: measure one of them again",
     "%1 entre épaulements dépasse les %2 hors tout : mesurez de nouveau l’un des deux"},
    {"%1 broken", "%1 {cassée|cassées}"},
    {"%1 found", "%1 en place"},
    {"%1 from %2 on", "%1 à partir de %2"},
    {"%1 from %2 to %3", "%1 de %2 à %3"},
    {"%1 from %2, past the end of the log: look at it again",
     "%1 depuis %2, au-delà du bout de la pièce : à revoir"},
    {"%1 has a third field and its sheet no denominator: state whether the sheet counts quarters, eighths or "
     "sixteenths of an inch",
     "%1 a un troisième nombre et sa feuille pas de dénominateur : indiquez si la feuille compte en quarts, "
     "en huitièmes ou en seizièmes de pouce"},
    {"%1 has no unit and its sheet none for its numbers: write it as 8 1/2 in or 215 mm, or state numbers_in "
     "of the sheet or the record",
     "%1 n’a pas d’unité et sa feuille n’en a pas pour ses nombres : écrivez-le comme 8 1/2 in ou 215 mm, ou "
     "indiquez numbers_in de la feuille ou du relevé"},
    {"%1 has two fields and can be feet.inches or decimal feet: state which of them the sheet means",
     "%1 a deux nombres et peut être des pieds.pouces ou des pieds décimaux : indiquez ce que la feuille "
     "entend"},
    {"%1 is %2, where others like it are about %3: was it noted in another unit?",
     "%1 fait %2, alors que d’autres du même genre font environ %3 : a-t-il été noté dans une autre unité ?"},
    {"%1 is not from 0 to %2: look at the sheet again", "%1 n’est pas de 0 à %2 : revoyez la feuille"},
    {"%1 is not over 0 and up to %2: look at the sheet again",
     "%1 n’est pas au-dessus de 0 et jusqu’à %2 : revoyez la feuille"},
    {"%1 is not read as a length from its character %2 on: write feet.inches.parts such as 3.10.1, or a "
     "number with its unit such as 8 1/2 in or 215 mm",
     "%1 ne se lit pas comme une longueur à partir de son caractère %2 : écrivez pieds.pouces.parties comme "
     "3.10.1, ou un nombre avec son unité comme 8 1/2 in ou 215 mm"},
    {"%1 is over %2 up or down: look at the sheet again",
     "%1 dépasse %2 vers le haut ou le bas : revoyez la feuille"},
    {"%1 is stated twice: give each its own name",
     "%1 est indiqué deux fois : donnez à chacun son propre nom"},
    {"%1 lies past the end of the log, which is %2 long: measure one of them again",
     "%1 se trouve au-delà du bout de la pièce, longue de %2 : mesurez de nouveau l’un des deux"},
    {"%1 missing", "%1 {manquante|manquantes}"},
    {"%1 numbers have a third field and their sheet no denominator, %2 the first of them: state whether the "
     "sheet counts quarters, eighths or sixteenths of an inch",
     "%1 nombres ont un troisième nombre et leur feuille pas de dénominateur, %2 le premier d’entre eux : "
     "indiquez si la feuille compte en quarts, en huitièmes ou en seizièmes de pouce"},
    {"%1 numbers have no unit and their sheet none for its numbers, %2 the first of them: state numbers_in "
     "of the record or the sheet, or write them as 8 1/2 in or 215 mm",
     "%1 nombres n’ont pas d’unité et leur feuille n’en a pas pour ses nombres, %2 le premier d’entre eux : "
     "indiquez numbers_in du relevé ou de la feuille, ou écrivez-les comme 8 1/2 in ou 215 mm"},
    {"%1 numbers have two fields and can be feet.inches or decimal feet, %2 the first of them: state which "
     "of them the sheet means",
     "%1 nombres ont deux champs et peuvent être des pieds.pouces ou des pieds décimaux, %2 le premier "
     "d’entre eux : indiquez ce que la feuille entend"},
    {"%1 rows read: %2; %3 rows or cells not taken. In the document: %4 new logs, %5 new values in logs that "
     "were there",
     "%1 lignes lues : %2 ; %3 lignes ou cases non reprises. Dans le document : %4 pièces nouvelles, %5 "
     "valeurs nouvelles dans des pièces qui y étaient"},
    {"%1 sawn", "%1 {sciée|sciées}"},
    {"%1 up to %2", "%1 jusqu’à %2"},
    {"%1 {log that is to be kept is|logs that are to be kept are} cut anew in this state, by what it states "
     "of others: %2; compare this state with the one as found, which tells what differs",
     "%1 {pièce à garder est retaillée|pièces à garder sont retaillées} dans cet état, par ce qu’il indique "
     "d’autres pièces : %2 ; comparez cet état avec celui tel que trouvé, ce qui dit ce qui diffère"},
    {"%1 {timber of a floor was|timbers of floors were} measured, and what was measured is not in the model: "
     "timbers are as their floor is stated",
     "%1 {bois de plancher a été mesuré|bois de planchers ont été mesurés}, et ces mesures ne sont pas dans "
     "le modèle : les bois sont tels que leur plancher est indiqué"},
    {"%1, %2 deep", "%1, profond de %2"},
    {"%1, column \"%2\": %3", "%1, colonne « %2 » : %3"},
    {"%1: the house as it was found (%2) cannot be laid out, so that no figure of its wood is known: mend "
     "what is wrong in that state first",
     "%1 : la maison telle qu’elle a été trouvée (%2) ne peut être tracée, si bien qu’aucun chiffre de son "
     "bois n’est connu : corrigez d’abord ce qui est faux dans cet état"},
    {"%1; of %2 logs they say nothing yet but where they lie",
     "%1 ; de %2 pièces elles ne disent encore que la place"},
    {"As found", "Tel que relevé"},
    {"Count: logs of the record. Volume: the wood of the pieces that they were found as, joints, openings "
     "and bores taken off. Outside face: the area of all surfaces of these pieces that look more outward "
     "than up, down or along, each as it is seen square on. Percent: 100 x part / all that was found.",
     "Nombre : pièces du relevé. Volume : le bois des pièces telles qu’elles ont été trouvées, assemblages, "
     "ouvertures et trous déduits. Face extérieure : l’aire de toutes les surfaces de ces pièces qui "
     "regardent plus vers l’extérieur que vers le haut, le bas ou le long, chacune vue de face. Pour cent : "
     "100 x partie / tout ce qui a été trouvé."},
    {"Levels of the upper edges of logs at their ends",
     "Niveaux des arêtes supérieures des pièces à leurs bouts"},
    {"Logs of the record that the house as found has no piece of, without volume and face here: %1.",
     "Pièces du relevé dont la maison telle que trouvée n’a aucune pièce, sans volume ni face ici : %1."},
    {"Logs that are to stay by their decisions, and in whose place this state shows new wood or none: %1. "
     "They are not counted as old wood that stays.",
     "Pièces qui doivent rester selon leurs décisions, et à la place desquelles cet état montre du bois neuf "
     "ou rien : %1. Elles ne comptent pas comme bois ancien qui reste."},
    {"No log of the record is a piece of the house as it was found, or that house cannot be laid out: no "
     "volume and no face is known.",
     "Aucune pièce du relevé n’est une pièce de la maison telle qu’elle a été trouvée, ou cette maison ne "
     "peut être tracée : aucun volume et aucune face n’est connu."},
    {"Of a mended log the old wood alone counts, as far as a mend that is drawn in the state shown cuts it "
     "out; what is cut off one that is used elsewhere is not taken off. These are sums and no verdict on "
     "what should stay.",
     "D’une pièce réparée seul le vieux bois compte, pour autant qu’une réparation dessinée dans l’état "
     "montré l’ôte ; ce qui est coupé d’une pièce réemployée ailleurs n’est pas déduit. Ce sont des sommes, "
     "et aucun verdict sur ce qui devrait rester."},
    {"Pegs as found", "Chevilles relevées"},
    {"a log has no tag: give it one of its own, which it keeps for ever",
     "une pièce n’a pas de repère : donnez-lui le sien, qu’elle garde pour toujours"},
    {"a moisture of %1 in a hundred is less than wood in a house has: was it a share of one, and %2 meant?",
     "une humidité de %1 pour cent est moins que n’en a le bois d’une maison : était-ce une part de un, et "
     "voulait-on dire %2 ?"},
    {"a moisture says little without its season and the depth of its probe: state both",
     "une humidité dit peu sans sa saison et la profondeur de sa sonde : indiquez les deux"},
    {"a sheet counts quarters, eighths or sixteenths of an inch: state 4, 8 or 16",
     "une feuille compte en quarts, huitièmes ou seizièmes de pouce : indiquez 4, 8 ou 16"},
    {"all that was found", "tout ce qui a été trouvé"},
    {"as found", "tel que relevé"},
    {"as found: %1", "relevé : %1"},
    {"both ends of the log are in corner %1: ends are told apart by their corner",
     "les deux bouts de la pièce sont dans l’angle %1 : les bouts se distinguent par leur angle"},
    {"bow %1", "cintrage %1"},
    {"bow %1 to the %2", "cintrage %1 vers : %2"},
    {"by", "par"},
    {"condition: %1", "état : %1"},
    {"count", "nombre"},
    {"decided: leave out", "décidé : ne pas reposer"},
    {"decided: mend", "décidé : réparer"},
    {"decided: replace", "décidé : remplacer"},
    {"decided: use elsewhere", "décidé : réemployer ailleurs"},
    {"decision", "décision"},
    {"end in %1: %2", "bout à %1 : %2"},
    {"found as %1", "relevée comme %1"},
    {"jambs of opening %1 were noted, and not from which corner: state it as its zero; until then it is put "
     "nowhere by them",
     "des jambages de l’ouverture %1 sont notés, et non depuis quel angle : indiquez-le comme son zéro ; "
     "d’ici là ils ne la placent nulle part"},
    {"keep", "garder"},
    {"later cut: %1", "coupe ultérieure : %1"},
    {"later cuts", "coupes ultérieures"},
    {"leave out", "ne pas reposer"},
    {"log %1 goes elsewhere, and %2, where it was found, is shown as old wood still: state what stands there "
     "in this state",
     "la pièce %1 va ailleurs, et %2, là où elle a été trouvée, est encore montrée en bois ancien : indiquez "
     "ce qui se tient là dans cet état"},
    {"log %1 is %2 high where it is lowest, and %3 needs %4: it is too low for that place",
     "la pièce %1 est haute de %2 là où elle est la plus basse, et il faut %4 à %3 : elle est trop basse "
     "pour cette place"},
    {"log %1 is %2 long in the house as it was found, where nobody taped it, and %3 needs %4: it is too "
     "short for that place",
     "la pièce %1 est longue de %2 dans la maison telle qu’elle a été trouvée, où personne ne l’a mesurée, "
     "et il faut %4 à %3 : elle est trop courte pour cette place"},
    {"log %1 is %2 long, and %3 needs %4: it is too short for that place",
     "la pièce %1 est longue de %2, et il faut %4 à %3 : elle est trop courte pour cette place"},
    {"log %1 is %2 wide where it is narrowest, and %3 needs %4: it is too narrow for that place",
     "la pièce %1 est large de %2 là où elle est la plus étroite, et il faut %4 à %3 : elle est trop étroite "
     "pour cette place"},
    {"log %1 is decided “%2”, and %3 puts new wood into it, in %4: decide to mend it, or take the mend out "
     "of this state",
     "pour la pièce %1 il est décidé « %2 », et %3 y met du bois neuf, dans %4 : décidez de la réparer, ou "
     "ôtez la réparation de cet état"},
    {"log %1 is decided “%2”, and was found %3: is that meant to stay in it?",
     "pour la pièce %1 il est décidé « %2 », et elle a été trouvée : %3. Est-ce que cela doit y rester ?"},
    {"log %1 is to be kept as it is, and %2 puts new wood into it, in %3: decide to mend it, or take the "
     "mend out of this state",
     "la pièce %1 doit être gardée telle quelle, et %2 y met du bois neuf, dans %3 : décidez de la réparer, "
     "ou ôtez la réparation de cet état"},
    {"log %1 is to be left out, and %2 is shown as old wood: state what stands there in this state",
     "la pièce %1 ne doit pas être reposée, et %2 est montrée en bois ancien : indiquez ce qui se tient là "
     "dans cet état"},
    {"log %1 is to be mended, and %2 is shown whole: state the [[mend]] of it in this state",
     "la pièce %1 doit être réparée, et %2 est montrée entière : écrivez-en le [[mend]] dans cet état"},
    {"log %1 is to be replaced, and %2 is shown as old wood: state fabric = \"replacement\" of it in this "
     "state",
     "la pièce %1 doit être remplacée, et %2 est montrée en bois ancien : indiquez fabric = \"replacement\" "
     "pour elle dans cet état"},
    {"log %1 is to be turned end for end, and %2 puts new wood into it, in %3: one decision holds, so decide "
     "to mend it and say in its note that it is turned, or take the mend out of this state",
     "la pièce %1 doit être retournée bout pour bout, et %2 y met du bois neuf, dans %3 : une seule décision "
     "vaut, décidez donc de la réparer et dites dans sa note qu’elle est retournée, ou ôtez la réparation de "
     "cet état"},
    {"log %1 is to be turned end for end, and the butt of %2 is shown where it was found: state its butt at "
     "the other end in this state",
     "la pièce %1 doit être retournée bout pour bout, et le pied de %2 est montré là où il a été trouvé : "
     "indiquez son pied à l’autre bout dans cet état"},
    {"log %1 is to be turned end for end, and the corner that its butt lies in was never recorded, so that "
     "nothing of %2 turns: record its butt",
     "la pièce %1 doit être retournée bout pour bout, et l’angle où se trouve son pied n’a jamais été "
     "relevé, si bien que rien de %2 ne tourne : relevez son pied"},
    {"log %1 is to become %2, and its length, height and width are not all recorded: measure them before "
     "anything is cut",
     "la pièce %1 doit devenir %2, et sa longueur, sa hauteur et sa largeur ne sont pas toutes relevées : "
     "mesurez-les avant de couper quoi que ce soit"},
    {"log %1 is to become %2, and that is shown as new wood: state fabric = \"kept\" of it in this state; as "
     "it is the log is not counted as old wood that stays",
     "la pièce %1 doit devenir %2, qui est montrée en bois neuf : indiquez fabric = \"kept\" pour elle dans "
     "cet état ; telle quelle, la pièce ne compte pas comme bois ancien qui reste"},
    {"log %1 is to lie in wall %2, round %3, and the shell has no such log: decide otherwise, or mend the "
     "place",
     "la pièce %1 doit se trouver dans le mur %2, rang %3, et la coque n’a pas de telle pièce : décidez "
     "autrement, ou corrigez la place"},
    {"log %1 is to stay, and in its place, where it was found %2 long, %3 is shown as new wood, %4 long: "
     "decide otherwise, or state the old log there; as it is it is not counted as old wood that stays",
     "la pièce %1 doit rester, et à sa place, où elle a été trouvée longue de %2, %3 est montrée en bois "
     "neuf, longue de %4 : décidez autrement, ou indiquez-y la pièce ancienne ; telle quelle, elle ne compte "
     "pas comme bois ancien qui reste"},
    {"log %1 is told to be timber %2 of a floor, and to lie in a wall: one of the two is wrong",
     "la pièce %1 est dite être le bois %2 d’un plancher, et se trouver dans un mur : l’un des deux est "
     "faux"},
    {"log %1 is told to be timber %2, and no floor of the house as it was found has one of that tag: mend "
     "the tag, or the floor",
     "la pièce %1 est dite être le bois %2, et aucun plancher de la maison telle que trouvée n’a ce repère : "
     "corrigez le repère, ou le plancher"},
    {"log %1 lies where log %2 lies, in wall %3, round %4: say which piece each is, or which replaces or is "
     "scarfed to which",
     "la pièce %1 se trouve où se trouve la pièce %2, mur %3, rang %4 : dites quel morceau est chacune, ou "
     "laquelle remplace l’autre ou lui est entée"},
    {"log %1 names itself: name the other log", "la pièce %1 se nomme elle-même : nommez l’autre pièce"},
    {"log %1 replaces itself by way of others: one of them came first",
     "la pièce %1 se remplace elle-même à travers d’autres : l’une d’elles était la première"},
    {"log %1 was found %2, %3 deep, and its mends do not reach so deep there between %4 and %5 from %6: is "
     "the rest meant to stay?",
     "la pièce %1 a été trouvée : %2, profond de %3. Ses réparations ne vont pas si profond entre %4 et %5 "
     "depuis %6 : le reste doit-il rester ?"},
    {"log %1 was found %2, and of that its mends leave a length of %3 in it, between %4 and %5 from %6: is "
     "that meant to stay?",
     "la pièce %1 a été trouvée : %2. Ses réparations en laissent une longueur de %3, entre %4 et %5 depuis "
     "%6 : est-ce que cela doit rester ?"},
    {"log %1, timber %2 of a floor", "la pièce %1, bois %2 d’un plancher"},
    {"log %1: %2 from %3 was noted, and the log lies from %4 to %5 there: look at the number and the corner "
     "again; it is drawn nowhere",
     "pièce %1 : %2 depuis %3 est noté, et la pièce va de %4 à %5 : regardez à nouveau le nombre et l’angle "
     "; ce n’est dessiné nulle part"},
    {"logs %1 and %2 are both to lie at %3: one of them goes elsewhere",
     "les pièces %1 et %2 doivent toutes deux se trouver en %3 : l’une d’elles va ailleurs"},
    {"logs %1 and %2 are both told to be timber %3: say which replaces or is scarfed to which",
     "les pièces %1 et %2 sont dites toutes deux être le bois %3 : dites laquelle remplace l’autre ou lui "
     "est entée"},
    {"mend", "réparer"},
    {"moisture readings", "mesures d’humidité"},
    {"no end of the log lies in corner %1: name an end's corner",
     "aucun bout de la pièce ne se trouve dans l’angle %1 : nommez l’angle d’un bout"},
    {"no level plane of the record is called %1: state it with its offset",
     "aucun plan de niveau du relevé ne s’appelle %1 : indiquez-le avec son décalage"},
    {"no log of the record has the tag %1: record it, even where it is missing, or mend the tag",
     "aucune pièce du relevé n’a le repère %1 : relevez-la, même si elle manque, ou corrigez le repère"},
    {"no other log says that it was cut from %1, and none is called so: look whether the name is the same in "
     "its other pieces",
     "aucune autre pièce ne dit venir de %1, et aucune ne s’appelle ainsi : voyez si le nom est le même dans "
     "ses autres morceaux"},
    {"no sheet of the record is called %1: state it with its denominator",
     "aucune feuille du relevé ne s’appelle %1 : indiquez-la avec son dénominateur"},
    {"nobody has decided what becomes of log %1, and %2 puts new wood into it, in %3: decide to mend it, or "
     "take the mend out of this state",
     "personne n’a décidé ce que devient la pièce %1, et %2 y met du bois neuf, dans %3 : décidez de la "
     "réparer, ou ôtez la réparation de cet état"},
    {"not decided", "non décidé"},
    {"note: %1", "note : %1"},
    {"old logs", "vieilles pièces"},
    {"on", "le"},
    {"openings part round %1 of wall %2 into %3 logs: say which piece log %4 becomes",
     "des ouvertures partagent le rang %1 du mur %2 en %3 pièces : dites laquelle devient la pièce %4"},
    {"outside face ft2", "face extérieure pi²"},
    {"outside face m2", "face extérieure m²"},
    {"peg broken", "cheville cassée"},
    {"peg missing", "cheville manquante"},
    {"peg sawn", "cheville sciée"},
    {"pegs as found", "chevilles relevées"},
    {"pegs: %1", "chevilles : %1"},
    {"piece %1 is ticked twice for the same thing, and counts once: take one of the two out",
     "la pièce %1 est cochée deux fois pour la même chose, et compte une fois : ôtez l’une des deux"},
    {"places along log %1 were noted (%2), and not from which corner: state it as its zero; until then they "
     "are drawn nowhere",
     "des places le long de la pièce %1 sont notées (%2), et non depuis quel angle : indiquez-le comme son "
     "zéro ; d’ici là elles ne sont dessinées nulle part"},
    {"places from %1", "places depuis %1"},
    {"places from a corner that nobody recorded", "places depuis un angle que personne n’a noté"},
    {"replace", "remplacer"},
    {"running dimension %1 is %2 and lies before the one in front of it, %3: put them in order, or look at "
     "the sheet again",
     "la cote cumulée %1 est %2 et se trouve avant la précédente, %3 : mettez-les en ordre, ou revoyez la "
     "feuille"},
    {"state \"%1\" has no mend and states no log otherwise than as it was found: it is held to be the house "
     "as it once stood, and decisions are not held against it. If it is the house as it shall stand, state "
     "in it what becomes of its logs",
     "l’état « %1 » n’a pas de réparation et n’indique aucune pièce autrement que telle qu’elle a été "
     "trouvée : il est pris pour la maison telle qu’elle fut, et les décisions ne lui sont pas opposées. Si "
     "c’est la maison telle qu’elle doit être, indiquez-y ce que deviennent ses pièces"},
    {"stations", "points de mesure"},
    {"stayed by decision %1 of each log", "restait selon la décision %1 de chaque pièce"},
    {"stays: keep, mend, turn, use elsewhere", "reste : garder, réparer, retourner, réemployer"},
    {"tests", "essais"},
    {"the comma of %1 can part thousands or decimals: write the number without it, or with a point",
     "la virgule de %1 peut séparer des milliers ou des décimales : écrivez le nombre sans elle, ou avec un "
     "point"},
    {"the head at %1 does not lie over the sill at %2: look at their signs again",
     "le linteau à %1 n’est pas au-dessus de l’appui à %2 : revoyez leurs signes"},
    {"the jamb at %1 does not stand further from the corner than the one at %2: look which corner they were "
     "measured from",
     "le jambage à %1 n’est pas plus loin de l’angle que celui à %2 : voyez depuis quel angle ils ont été "
     "mesurés"},
    {"the second field of %1 is inches and not under 12: look at the sheet again, and write feet, inches and "
     "parts",
     "le deuxième nombre de %1 est en pouces et n’est pas sous 12 : revoyez la feuille, et écrivez pieds, "
     "pouces et parties"},
    {"the third field of %1 is not under %2, which is the denominator of its sheet: look at the sheet again, "
     "or state another denominator",
     "le troisième nombre de %1 n’est pas sous %2, le dénominateur de sa feuille : revoyez la feuille, ou "
     "indiquez un autre dénominateur"},
    {"the zone ends at %1, before its beginning at %2: put the two in order",
     "la zone finit à %1, avant son début à %2 : mettez les deux en ordre"},
    {"timber %1 goes, and the floor of %2 is shown as old wood: its timbers are of one wood in the model, so "
     "that nothing is ordered for it; order it by hand",
     "le bois %1 s’en va, et le plancher de %2 est montré en vieux bois : ses bois sont d’une seule sorte "
     "dans le modèle, et rien n’est commandé pour lui ; commandez-le à la main"},
    {"timber %1 is to stay, and the floor of %2 is stated to be a replacement: state fabric = \"kept\" of "
     "the floor, or decide otherwise",
     "le bois %1 doit rester, et le plancher de %2 est indiqué comme un remplacement : indiquez fabric = "
     "\"kept\" pour le plancher, ou décidez autrement"},
    {"timber %1 is to stay, and this state has no timber %2: decide otherwise, or state its floor",
     "le bois %1 doit rester, et cet état n’a pas de bois %2 : décidez autrement, ou indiquez son plancher"},
    {"timber %1 of a floor", "bois %1 d’un plancher"},
    {"to stay, and not standing in this state", "à garder, et absentes de cet état"},
    {"to wall", "vers le mur"},
    {"turn end for end", "retourner bout pour bout"},
    {"two logs have the tag %1: give each its own, which it keeps for ever",
     "deux pièces ont le repère %1 : donnez à chacune le sien, qu’elle garde pour toujours"},
    {"use elsewhere", "réemployer ailleurs"},
    {"why", "pourquoi"},
    {"wind %1", "gauchissement %1"},
    {"written all the same, without what was not taken: %1",
     "écrit tout de même, sans ce qui n’a pas été repris : %1"},
    {"written: %1", "écrit : %1"},
    {"zones", "zones"},
};

} // namespace

std::span<const Entry> french_of_record() {
    return entries;
}

} // namespace roundlay
