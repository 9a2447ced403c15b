// Of mended logs, and the new wood that comes into them.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 in the log that it mends", "%1 dans la pièce qu’il répare"},
    {"%1 is fitted to old work: %2.", "%1 s’ajuste à l’ouvrage ancien : %2."},
    {"%1 is mended with %2.", "%1 est réparée avec %2."},
    {"%1 is new wood for %2: fit it there before the log is raised.",
     "%1 est du bois neuf pour %2 : ajustez-le dans cette pièce avant de la lever."},
    {"%1, lapped", "%1, à mi-bois"},
    {", %1 to %2 from the outside", ", de %1 à %2 de l’extérieur"},
    {", %1 to %2 from the outside face", ", de %1 à %2 de la face extérieure"},
    {", %1 up to %2 over %3", ", de %1 à %2 au-dessus de %3"},
    {"At its mend %1.", "À sa réparation, %1."},
    {"Hold every number of these against the old wood before it is cut: some may only have been proposed.",
     "Tenez chacun de ces nombres contre le vieux bois avant de couper : certains n’ont peut-être été que "
     "proposés."},
    {"Its seams at corners are cut %1 clear of it: scribe them at the wall.",
     "Ses joints d’angle en sont écartés de %1 : tracez-les au mur."},
    {"Lap cut into %1, %2 deep", "Mi-bois dans %1, profond de %2"},
    {"Length chosen by %1: no least length is published.",
     "Longueur choisie par %1 : aucune longueur minimale n’est publiée."},
    {"Length chosen by the maker: no least length is published.",
     "Longueur choisie par l’artisan : aucune longueur minimale n’est publiée."},
    {"Recess for new wood in %1, %2 deep", "Entaille pour bois neuf dans %1, profonde de %2"},
    {"a fresh log of %1 in old dry wood sinks alone, by some %2, and %3 of wall over it; all fresh logs up "
     "to "
     "here sink by %4 (%5; %6, %7)",
     "une pièce fraîche de %1 dans du vieux bois sec descend seule, de quelque %2, et avec elle %3 de mur au-"
     "dessus ; toutes les pièces fraîches jusqu’ici descendent de %4 (%5 ; %6, %7)"},
    {"a mend does not say which log it is of", "une réparation ne dit pas de quelle pièce elle est"},
    {"a mend is stated of a log that is not there",
     "une réparation est indiquée pour une pièce qui n’existe pas"},
    {"a mend is stated of the log marked %1, and %2 logs bear that mark",
     "une réparation est indiquée pour la pièce marquée %1, et %2 pièces portent cette marque"},
    {"a mend is stated of the log marked %1, and no log bears that mark",
     "une réparation est indiquée pour la pièce marquée %1, et aucune pièce ne porte cette marque"},
    {"a mend is stated of this round, and openings part it into %1 logs",
     "une réparation est indiquée pour ce rang, et des ouvertures le coupent en %1 pièces"},
    {"a notch or an opening parts the wood along this mend",
     "une entaille ou une ouverture coupe le bois le long de cette réparation"},
    {"a stretch of %1 at least", "au moins %1 de long"},
    {"across the face this mend begins at %1 and ends at %2",
     "en travers de la face, cette réparation commence à %1 et finit à %2"},
    {"an edge of this mend runs through a bore, %1 from the log's left end",
     "un bord de cette réparation traverse un perçage, à %1 du bout gauche de la pièce"},
    {"cut %1 to %2", "coupe %1 à %2"},
    {"cut out of mended logs", "ôté des pièces réparées"},
    {"cuts leave no wood of this log where the mend lies",
     "les coupes ne laissent pas de bois de cette pièce là où est la réparation"},
    {"its top face to %1", "son dessus à %1"},
    {"its under face to %1", "son dessous à %1"},
    {"lap cut %1 deep into %2 from %3 to %4", "mi-bois profond de %1 dans %2, de %3 à %4"},
    {"lapped with %1", "à mi-bois avec %1"},
    {"let it end clear of the notch", "faites-la finir à l’écart de l’entaille"},
    {"let it lie where there is wood", "mettez-la là où il y a du bois"},
    {"mends are of logs in walls, not of joists or beams",
     "les réparations concernent les pièces des murs, pas les solives ni les poutres"},
    {"move the edge clear of the bore", "écartez ce bord du perçage"},
    {"new end of a log", "bout neuf d’une pièce"},
    {"new wood in %1", "bois neuf dans %1"},
    {"piece let into a log", "pièce rapportée"},
    {"published practice replaces that length of the log then, by a splice or a whole log; whoever mends it "
     "decides",
     "la pratique publiée remplace alors cette longueur de la pièce, par une enture ou une pièce entière ; "
     "c’est à qui la répare d’en décider"},
    {"recess for a mend %1 deep into %2 from %3 to %4",
     "entaille de réparation profonde de %1 dans %2, de %3 à %4"},
    {"say which piece of the round it is, counted from the left",
     "dites quelle pièce du rang c’est, comptée depuis la gauche"},
    {"state a mend on either side of it", "indiquez une réparation de chaque côté"},
    {"state from and depth", "indiquez from et depth"},
    {"state its wall and round, or the mark on the log",
     "indiquez son mur et son rang, ou la marque de la pièce"},
    {"state lap; no least length is published, it is the maker's choice",
     "indiquez lap ; aucune longueur minimale n’est publiée, c’est le choix de l’artisan"},
    {"state one mend for both, or let them lie apart",
     "indiquez une seule réparation pour les deux, ou écartez-les"},
    {"take wood as dry as the old, or leave room over openings, at posts and at the ends of the log",
     "prenez du bois aussi sec que l’ancien, ou laissez du jeu au-dessus des ouvertures, aux poteaux et aux "
     "bouts de la pièce"},
    {"the old wood alone keeps %1 percent of the log's area and %2 percent of its section modulus for loads "
     "from above, (b - d) / b of both, b = %3, h = %4, d = %5; nothing is counted for the new wood. That is "
     "geometry, no verdict: local code and licensed practice say what it may carry",
     "le vieux bois seul garde %1 pour cent de l’aire de la pièce et %2 pour cent de son module de section "
     "pour des charges venant du dessus, (b - d) / b des deux, b = %3, h = %4, d = %5 ; rien n’est compté "
     "pour le bois neuf. C’est de la géométrie, pas un verdict : les règles locales et un professionnel "
     "agréé "
     "disent ce qu’il peut porter"},
    {"the old wood alone keeps %1 percent of the log's area, (h - d) / h, and %2 percent of its section "
     "modulus for loads from above, (h - d)^2 / h^2, b = %3, h = %4, d = %5; nothing is counted for the new "
     "wood. That is geometry, no verdict: local code and licensed practice say what it may carry",
     "le vieux bois seul garde %1 pour cent de l’aire de la pièce, (h - d) / h, et %2 pour cent de son "
     "module "
     "de section pour des charges venant du dessus, (h - d)^2 / h^2, b = %3, h = %4, d = %5 ; rien n’est "
     "compté pour le bois neuf. C’est de la géométrie, pas un verdict : les règles locales et un "
     "professionnel "
     "agréé disent ce qu’il peut porter"},
    {"the top face", "le dessus"},
    {"this mend begins %1 from the log's end and reaches to %2",
     "cette réparation commence à %1 du bout de la pièce et va jusqu’à %2"},
    {"this mend does not say where it begins and how deep it is",
     "cette réparation ne dit pas où elle commence ni sa profondeur"},
    {"this mend ends within the slant of a shoulder, at a corner that is not square",
     "cette réparation finit dans le biais d’un épaulement, à un angle qui n’est pas droit"},
    {"this mend is %1 deep, and the log only %2 thick there",
     "cette réparation est profonde de %1, et la pièce n’a là que %2"},
    {"this mend reaches %1 from the log's end, and the log is %2 long",
     "cette réparation va à %1 du bout de la pièce, qui est longue de %2"},
    {"this mend takes %1 of %2, past the middle of the log",
     "cette réparation prend %1 sur %2, au-delà du milieu de la pièce"},
    {"this splice does not say how long its lap is", "cette enture ne dit pas la longueur de son mi-bois"},
    {"two mends take the same wood of this log", "deux réparations prennent le même bois de cette pièce"},
};

} // namespace

std::span<const Entry> french_of_mends() {
    return entries;
}

} // namespace roundlay
