// Of reports on a house that stands, and of two of its states side by side.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"\"%1\" lies past the end of the log, which is %2 long in the plan: was it read right?",
     "\"%1\" se trouve au-delà du bout de la pièce, longue de %2 dans le plan : a-t-il été bien lu ?"},
    {"%1 %2", "%1 %2"},
    {"%1 %2 from %3", "%1 %2 depuis %3"},
    {"%1 %2 to %3", "%1 %2 vers %3"},
    {"%1 (contradicted)", "%1 (contredit)"},
    {"%1 (open)", "%1 (ouvert)"},
    {"%1 (proposed)", "%1 (proposé)"},
    {"%1 along its wall", "%1 le long de son mur"},
    {"%1 from %2", "%1 depuis %2"},
    {"%1 measured, %2 proposed where nobody has measured, %3 contradicted by another measure",
     "%1 {mesuré|mesurés}, %2 {proposé|proposés} là où personne n’a mesuré, %3 {contredit|contredits} par "
     "une autre mesure"},
    {"%1 {log that nobody recorded is|logs that nobody recorded are} new wood in this state, %2 first: they "
     "are ordered and count nowhere as old wood; record them, or state what wood they are of",
     "%1 {pièce que personne n’a relevée est|pièces que personne n’a relevées sont} en bois neuf dans cet "
     "état, %2 d’abord : on les commande et elles ne comptent nulle part comme bois ancien ; relevez-les, ou "
     "dites de quel bois elles sont"},
    {"%1, %2", "%1, %2"},
    {"%1, %2 %3", "%1, %2 %3"},
    {"%1, wall %2", "%1, mur %2"},
    {"%1: %2 is \"%3\" in the document and \"%4\" in the rows",
     "%1 : %2 est « %3 » dans le document et « %4 » dans les lignes"},
    {"%1: from %2 to %3", "%1 : de %2 à %3"},
    {"%1: new to %2, lap %3 on from there", "%1 : neuf jusqu’à %2, assemblage à mi-bois de %3 au-delà"},
    {"%1: no log is recorded in this document; --blank gives rows to fill in",
     "%1 : aucune pièce n’est relevée dans ce document ; --blank donne des lignes à remplir"},
    {"%1; numbers of two sheets cannot stand in one log, and the rows' are left out",
     "%1 ; des nombres de deux feuilles ne peuvent pas être dans une pièce, et ceux des lignes sont laissés "
     "de côté"},
    {"%1; old wood that stays and mends by its state “%2”",
     "%1 ; le vieux bois qui reste et les réparations selon son état « %2 »"},
    {"%1; the document's has stayed", "%1 ; celui du document est resté"},
    {"%1; the rows' stands now", "%1 ; c’est celui des lignes qui vaut maintenant"},
    {"--replace takes what the rows say", "--replace prend ce que disent les lignes"},
    {"3.10 is 3 ft 10 in", "3.10 vaut 3 ft 10 in"},
    {"3.10 is decimal feet", "3.10 est en pieds décimaux"},
    {"3.10.1 is 3 ft 10 in and 1/%1 in", "3.10.1 vaut 3 ft 10 in et 1/%1 in"},
    {"A house with droppings of mice is aired for at least 30 minutes before it is cleaned; droppings are "
     "soaked for 5 minutes in 1 part bleach to 9 of water and wiped up, never swept or vacuumed dry. (An "
     "older page of the same agency has 1 to 10.7.)",
     "Une maison avec des crottes de souris est aérée au moins 30 minutes avant le nettoyage ; les crottes "
     "sont trempées 5 minutes dans 1 partie d’eau de Javel pour 9 d’eau puis essuyées, jamais balayées ni "
     "aspirées à sec. (Une page plus ancienne du même organisme a 1 pour 10,7.)"},
    {"A place with ? behind it: nobody recorded the corner that it was measured from, and it is drawn "
     "nowhere.",
     "Une place suivie de ? : personne n’a noté l’angle depuis lequel elle est mesurée, et elle n’est "
     "dessinée nulle part."},
    {"A tag in brackets is of the drawing: nobody has recorded a log there. ≠: measures contradict one "
     "another; p: height and width are proposed. Dashed: on the other side alone.",
     "Un repère entre parenthèses est celui du dessin : personne n’y a relevé de pièce. ≠ : des mesures se "
     "contredisent ; p : hauteur et largeur sont proposées. En tirets : de l’autre côté seulement."},
    {"As noted", "Tel que noté"},
    {"Before anybody works on the house", "Avant que quiconque travaille à la maison"},
    {"Before anything is taken down a competent person surveys the house in writing, and services are shut "
     "off.",
     "Avant tout démontage, une personne compétente examine la maison par écrit, et les réseaux sont "
     "coupés."},
    {"Beside each wall: how many of its logs differ, by the letter of their change. Hatched: a wall that the "
     "other state does not have.",
     "À côté de chaque mur : combien de ses pièces diffèrent, par la lettre de leur changement. Hachuré : un "
     "mur que l’autre état n’a pas."},
    {"Beside each wall: how many of its logs each decision takes.",
     "À côté de chaque mur : combien de ses pièces prend chaque décision."},
    {"By, on", "Par, le"},
    {"CDC, hantavirus", "CDC, hantavirus"},
    {"Cause", "Cause"},
    {"Changes of mind", "Changements d’avis"},
    {"Condition", "État"},
    {"Corner", "Angle"},
    {"Corners", "Angles"},
    {"Corners, as they were measured", "Angles, tels qu’ils ont été mesurés"},
    {"Crossed, edged and marked M1, M2 …: new wood that mends the log; dashed: in its inside face.",
     "Croisé, bordé et marqué M1, M2 … : bois neuf qui répare la pièce ; en tirets : dans sa face "
     "intérieure."},
    {"Cut after the house was built", "Coupé après la construction de la maison"},
    {"Decision", "Décision"},
    {"EPA, renovation rule (second-hand)", "EPA, règle de rénovation (de seconde main)"},
    {"Each corner from outside, its two walls side by side, %1.",
     "Chaque angle vu de l’extérieur, ses deux murs côte à côte, %1."},
    {"Each wall as it is before, and under it as it is after. An unchanged log has its tag alone. New wood "
     "in the place of an old log is marked N, and that old log G. A log that moved tells the tag that it has "
     "in the other state.",
     "Chaque mur tel qu’il est avant, et dessous tel qu’il est après. Une pièce inchangée n’a que son "
     "repère. Du bois neuf à la place d’une pièce ancienne porte N, et cette pièce ancienne D. Une pièce "
     "déplacée dit le repère qu’elle a dans l’autre état."},
    {"End", "Bout"},
    {"Ends are left and right as seen from outside. No least length of a splice or a patch is published.",
     "Bouts gauche et droit vus de l’extérieur. Aucune longueur minimale d’enture ou de pièce rapportée "
     "n’est publiée."},
    {"Every log, its condition and what is decided", "Chaque pièce, son état et ce qui est décidé"},
    {"Every log, its sizes as they were measured",
     "Toutes les pièces, leurs dimensions comme elles ont été mesurées"},
    {"Every log, its wood, finish and old marks",
     "Toutes les pièces, leur bois, leur finition et leurs marques anciennes"},
    {"Every piece that differs", "Chaque pièce qui diffère"},
    {"Face", "Face"},
    {"Faces", "Faces"},
    {"Field sheets", "Feuilles de relevé"},
    {"Figures only: it plans no lift, designs no brace and finds nothing safe. Local code, a licensed "
     "professional and whoever is on the site decide.",
     "Des chiffres seulement : il ne prévoit aucun levage, ne calcule aucun étai et ne déclare rien sûr. Le "
     "code local, un professionnel agréé et ceux qui sont sur place décident."},
    {"Finish inside", "Finition intérieure"},
    {"Finish outside", "Finition extérieure"},
    {"From %1 to %2", "De %1 à %2"},
    {"Gap over", "Jeu dessus"},
    {"Gap under", "Jeu dessous"},
    {"Head", "Linteau"},
    {"How", "Comment"},
    {"How it was measured", "Comment on a mesuré"},
    {"How its numbers count", "Comment ses nombres comptent"},
    {"How much of the old wood stays", "Ce qui reste du vieux bois"},
    {"In houses from before 1978 lead-safe work is asked for where more than 6 ft2 of paint in a room or 20 "
     "ft2 outside are disturbed.",
     "Dans les maisons d’avant 1978, un travail sûr quant au plomb est exigé là où plus de 6 ft2 de peinture "
     "dans une pièce ou 20 ft2 dehors sont touchés."},
    {"Its marks", "Ses marques"},
    {"Jacks carry no more than is marked on them, stand on a firm base, and have wood between cap and load.",
     "Les vérins ne portent pas plus que ce qui y est marqué, reposent sur une base ferme et ont du bois "
     "entre la tête et la charge."},
    {"Large deposits of droppings are for a licensed contractor; lead paint is worked damp.",
     "Les gros dépôts de crottes sont pour une entreprise agréée ; la peinture au plomb se travaille "
     "humide."},
    {"Leans out, first wall", "Penche, premier mur"},
    {"Level", "Niveau"},
    {"Level planes", "Plans de niveau"},
    {"Logs as they were measured along their length", "Pièces telles que mesurées sur leur longueur"},
    {"Logs that are recorded as missing from end to end, in no sum here: %1.",
     "Pièces relevées comme manquantes d’un bout à l’autre, dans aucune somme ici : %1."},
    {"Logs that come", "Pièces qui viennent"},
    {"Logs too small here for their tags", "Pièces trop petites ici pour leurs repères"},
    {"Measures that do not agree, or cannot be placed",
     "Mesures qui ne s’accordent pas, ou qui ne trouvent pas leur place"},
    {"Mends", "Réparations"},
    {"Moisture is not decay: one sound rafter was 16 % in summer and over 20 % in winter at its surface "
     "(surveyors' guidance on biodeterioration). Second-hand: rot infects wood by spores from about 29 %, "
     "and may spread from wetter wood down to 20 %; some fungi rot wood well below. None of these figures "
     "says that a log is safe.",
     "L’humidité n’est pas la pourriture : un même chevron sain avait 16 % en été et plus de 20 % en hiver "
     "en surface (guide d’experts sur la biodétérioration). De seconde main : la pourriture infecte le bois "
     "par spores à partir d’environ 29 %, et peut gagner depuis du bois plus humide jusqu’à 20 % ; certains "
     "champignons pourrissent le bois bien en dessous. Aucun de ces chiffres ne dit qu’une pièce est sûre."},
    {"Moisture, percent of ovendry mass", "Humidité, pour cent de la masse anhydre"},
    {"NPS, Preservation Brief 47", "NPS, Preservation Brief 47"},
    {"Near jamb", "Jambage proche"},
    {"New wood", "Bois neuf"},
    {"Not shown: %1", "Non montrée : %1"},
    {"Note", "Note"},
    {"Numbers stay as they stand on the field sheets. What was not measured is proposed by a rule or by the "
     "drawing, and is no finding.",
     "Les nombres restent comme ils sont sur les feuilles de relevé. Ce qui n’a pas été mesuré est proposé "
     "par une règle ou par le dessin, et n’est pas un constat."},
    {"Numbers that are proposed, contradicted or open", "Nombres proposés, contredits ou ouverts"},
    {"OSHA, 29 CFR 1926.305(a), (c)", "OSHA, 29 CFR 1926.305(a), (c)"},
    {"OSHA, 29 CFR 1926.850(a)", "OSHA, 29 CFR 1926.850(a)"},
    {"OSHA, 29 CFR 1926.850(b)", "OSHA, 29 CFR 1926.850(b)"},
    {"OSHA, 29 CFR 1926.850(g)", "OSHA, 29 CFR 1926.850(g)"},
    {"Old logs that go", "Pièces anciennes qui partent"},
    {"Old marks", "Marques anciennes"},
    {"Open questions", "Questions ouvertes"},
    {"Opening", "Ouverture"},
    {"Openings in walls that one can fall through are guarded to about 42 in.",
     "Les ouvertures de murs par lesquelles on peut tomber sont protégées jusqu’à environ 42 in."},
    {"Openings that are closed or cut", "Ouvertures fermées ou percées"},
    {"Openings, as they were measured on the outside face",
     "Ouvertures, telles qu’elles ont été mesurées sur la face extérieure"},
    {"Over the first", "Au-dessus du premier"},
    {"Peg", "Cheville"},
    {"Pegs that are missing, broken or sawn off", "Chevilles manquantes, cassées ou sciées"},
    {"Photographs", "Photographies"},
    {"Plan", "Plan"},
    {"Plan: %1", "Plan : %1"},
    {"Plane", "Plan"},
    {"Probe", "Sonde"},
    {"Question", "Question"},
    {"Reason", "Raison"},
    {"Report on the house as it was found", "Rapport sur la maison telle qu’elle a été trouvée"},
    {"Rules of the United States, as published; elsewhere ask whoever makes them.",
     "Règles des États-Unis, comme publiées ; ailleurs, demandez à qui les fait."},
    {"Season", "Saison"},
    {"Showed", "Constat"},
    {"Shown from where they lie, by the names that the record has; the files themselves stay with whoever "
     "took them.",
     "Montrées depuis l’endroit où elles se trouvent, sous les noms que leur donne le relevé ; les fichiers "
     "restent chez qui les a pris."},
    {"Side", "Côté"},
    {"Sill", "Appui"},
    {"Sizes, wood and finish of logs", "Dimensions, bois et finition des pièces"},
    {"Summary", "Résumé"},
    {"Tests, and what they showed", "Essais, et ce qu’ils ont montré"},
    {"The record leaves no question open that this report asks.",
     "Le relevé ne laisse ouverte aucune question que ce rapport pose."},
    {"Tool", "Outil"},
    {"Two states side by side", "Deux états côte à côte"},
    {"Urgency", "Urgence"},
    {"Wall, round, piece", "Mur, rang, pièce"},
    {"Walls and diagonals, as they were measured", "Murs et diagonales, tels qu’ils ont été mesurés"},
    {"Walls and floors of a damaged house are shored or braced before anybody works inside.",
     "Les murs et planchers d’une maison endommagée sont étayés ou contreventés avant que quiconque y "
     "travaille."},
    {"Washington State, WAC 296-307-22509(3)", "État de Washington, WAC 296-307-22509(3)"},
    {"What is raised is cribbed at once; nobody works under a load that stands on jacks alone.",
     "Ce qui est levé est aussitôt calé par empilage ; personne ne travaille sous une charge qui ne tient "
     "que sur des vérins."},
    {"What is said", "Ce qui est dit"},
    {"What is stated of a house by law or by its protection is for whoever looks after it to say; this "
     "report holds what was found and decided, and passes no judgement.",
     "Ce que la loi ou la protection d’une maison demande, c’est à qui en a la charge de le dire ; ce "
     "rapport tient ce qui a été trouvé et décidé, et ne porte aucun jugement."},
    {"What it is about", "De quoi il s’agit"},
    {"What this rests on", "Sur quoi cela repose"},
    {"Who says so", "Qui le dit"},
    {"Why one thinks so", "Pourquoi on le pense"},
    {"Wood, pegs and later cuts", "Bois, chevilles et coupes ultérieures"},
    {"Zones of the wood", "Zones du bois"},
    {"a new end, lapped", "un bout neuf, à mi-bois"},
    {"a new face", "une face neuve"},
    {"a piece let in", "une pièce incrustée"},
    {"after, %1", "après, %1"},
    {"all others", "toutes les autres"},
    {"as it was noted: %1", "comme c’est noté : %1"},
    {"autumn", "automne"},
    {"bare numbers are %1", "les nombres nus sont en %1"},
    {"before, %1", "avant, %1"},
    {"cause", "cause"},
    {"closed", "fermée"},
    {"cut later", "coupé plus tard"},
    {"decided without a reason", "décidé sans motif indiqué"},
    {"depth", "profondeur"},
    {"each log that was found: condition, cause, urgency, decision",
     "chaque pièce trouvée : état, cause, urgence, décision"},
    {"faces", "faces"},
    {"far jamb", "jambage éloigné"},
    {"from", "depuis"},
    {"from %1 to %2", "de %1 à %2"},
    {"half the log", "la moitié de la pièce"},
    {"height \"%1\" is much less than the %2 that the log of the plan has in %3: was it read "
     "right?",
     "la hauteur « %1 » est bien moindre que les %2 qu’a la pièce du plan (%3) : est-elle bien "
     "lue ?"},
    {"height \"%1\" is much more than the %2 that the log of the plan has in %3: was it read "
     "right?",
     "la hauteur « %1 » est bien plus que les %2 qu’a la pièce du plan (%3) : est-elle bien "
     "lue ?"},
    {"how exact, and how", "avec quelle précision, et comment"},
    {"how much of the old wood stays: sums, no verdict",
     "combien du vieux bois reste : des sommes, aucun verdict"},
    {"how new wood is marked", "comment le bois neuf est marqué"},
    {"it is a PNG larger than 4 MB: save it as JPEG",
     "c’est un PNG de plus de 4 Mo : enregistrez-le en JPEG"},
    {"it is damaged", "il est endommagé"},
    {"it is larger than 40 MB: save it smaller", "il dépasse 40 Mo : enregistrez-le plus petit"},
    {"it is neither JPEG nor PNG: save it as JPEG", "ce n’est ni un JPEG ni un PNG : enregistrez-le en JPEG"},
    {"its whole length", "toute sa longueur"},
    {"its wood, pegs and later cuts", "son bois, ses chevilles et ses coupes ultérieures"},
    {"length \"%1\" is much less than the %2 that the log of the plan has in %3: was the tape "
     "read right?",
     "la longueur « %1 » est bien moindre que les %2 qu’a la pièce du plan (%3) : le ruban "
     "est-il bien lu ?"},
    {"length \"%1\" is much more than the %2 that the log of the plan has in %3: was the tape "
     "read right?",
     "la longueur « %1 » est bien plus que les %2 qu’a la pièce du plan (%3) : le ruban est-il "
     "bien lu ?"},
    {"lengths chosen by %1", "longueurs choisies par %1"},
    {"lengths without a unit", "longueurs sans unité"},
    {"log %1 is recorded as missing and cannot stay: replace it, or leave it out",
     "la pièce %1 est relevée comme manquante et ne peut pas rester : remplacez-la, ou écartez-la"},
    {"log %1, from elsewhere", "pièce %1, venue d’ailleurs"},
    {"log %1, from wall %2", "pièce %1, du mur %2"},
    {"log %1, from wall %2, round %3", "pièce %1, du mur %2, rang %3"},
    {"logs recorded", "pièces relevées"},
    {"measured from", "mesuré depuis"},
    {"measures contradict one another", "des mesures se contredisent"},
    {"millimetres (mm); what stands in the record, %1", "millimètres (mm) ; ce qui vient du relevé, %1"},
    {"no height or width was measured", "aucune hauteur ni largeur n’a été mesurée"},
    {"nobody has decided", "personne n’a décidé"},
    {"not seen", "non vu"},
    {"not stated", "non indiqué"},
    {"notes that stay open until their sheet says how they count",
     "des notes restent ouvertes tant que leur feuille ne dit pas comment elles comptent"},
    {"numbers of logs", "nombres des pièces"},
    {"opening %1", "ouverture %1"},
    {"over", "sur"},
    {"peg found", "cheville en place"},
    {"peg sawn off", "cheville sciée"},
    {"place not known", "place inconnue"},
    {"places along it are measured from a corner that is no end of it in the drawing: they are drawn nowhere",
     "des places y sont mesurées depuis un angle qui n’est pas un de ses bouts dans le dessin : elles ne "
     "sont dessinées nulle part"},
    {"places along it are noted, and not from which corner: they are drawn nowhere",
     "des places y sont notées, et non depuis quel angle : elles ne sont dessinées nulle part"},
    {"report on the house as it was found", "rapport sur la maison telle qu’elle a été trouvée"},
    {"second wall", "second mur"},
    {"soft or rotten, and how deep is not recorded", "mou ou pourri, et la profondeur n’est pas relevée"},
    {"spring", "printemps"},
    {"stands in the drawing, and nobody recorded it", "figure au dessin, et personne ne l’a relevée"},
    {"summer", "été"},
    {"the house as the document states it, a state without a name",
     "la maison comme l’indique le document, un état sans nom"},
    {"the house in its state “%1”", "la maison dans son état « %1 »"},
    {"the stated moisture is taken for the old wood alone: what is new in the house is weighed green, which "
     "is heavier; weigh before lifting",
     "l’humidité indiquée ne vaut que pour le bois ancien : ce qui est neuf dans la maison est compté vert, "
     "donc plus lourd ; pesez avant de lever"},
    {"the tables of the report, a sheet each", "les tableaux du rapport, une feuille chacun"},
    {"there is no such file", "ce fichier n’existe pas"},
    {"this report", "ce rapport"},
    {"two states side by side", "deux états côte à côte"},
    {"urgency", "urgence"},
    {"wall %1, round %2", "mur %1, rang %2"},
    {"wall %1, round %2, piece %3", "mur %1, rang %2, pièce %3"},
    {"what becomes of each log", "ce que devient chaque pièce"},
    {"what becomes of each log, by whom, when and why",
     "ce que devient chaque pièce, par qui, quand et pourquoi"},
    {"what is drawn", "ce qui est dessiné"},
    {"where it lay is not known", "on ne sait pas où elle était"},
    {"width \"%1\" is much less than the %2 that the log of the plan has in %3: was it read "
     "right?",
     "la largeur \"%1\" est bien moindre que les %2 de la pièce du plan (%3) : a-t-elle été "
     "bien lue ?"},
    {"width \"%1\" is much more than the %2 that the log of the plan has in %3: was it read "
     "right?",
     "la largeur \"%1\" est bien plus grande que les %2 de la pièce du plan (%3) : a-t-elle "
     "été bien lue ?"},
    {"winter", "hiver"},
    {"zones of the wood as they were found", "zones du bois telles que trouvées"},
};

} // namespace

std::span<const Entry> french_of_report() {
    return entries;
}

} // namespace roundlay
