// Of the book: cover, index, legend; and what files and pictures are called.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1, %2 distinct", "%1, dont %2 différentes"},
    {"%1, as none is stated", "%1, car aucune n’est indiquée"},
    {"%1; \"%2 1\" … in plans and elevations, %3, %4 … in its piece's table of bores",
     "%1 ; « %2 1 » … sur plans et élévations, %3, %4 … dans la table des perçages de sa pièce"},
    {"Bolt", "Boulon"},
    {"Butt is the thick end of the log as it grew, tip the thin end.",
     "Le gros bout est le pied de l’arbre, le petit bout sa cime."},
    {"Cautions", "Prudence"},
    {"Centre line; peg in its bore in an elevation; diagonal",
     "Ligne d’axe ; cheville dans son perçage en élévation ; diagonale"},
    {"Check the first log of each kind against its sheet and its neighbours before the next are cut. Wood "
     "moves as it dries: dimensions are those of the day of cutting.",
     "Vérifiez la première pièce de chaque sorte d’après sa fiche et ses voisines avant de tailler les "
     "suivantes. Le bois bouge en séchant : les cotes sont celles du jour de la taille."},
    {"Cover", "Couverture"},
    {"Datum end: the left end of a log seen from outside. All lengths of a piece are from it, the tape held "
     "to the end line EL with its own figure. Heights are over (+) or under (-) the level line LL, distances "
     "across from the outside face, as hewn where the log tapers; of a round log from its outermost line.",
     "Bout d’origine : le bout gauche d’une pièce vue de l’extérieur. Toutes les longueurs d’une pièce en "
     "partent, le ruban tenu sur la ligne d’about LA à son propre chiffre. Les hauteurs sont au-dessus (+) "
     "ou au-dessous (-) de la ligne de niveau LN, les distances en travers depuis la face extérieure, telle "
     "qu’équarrie où la pièce s’amincit ; d’un bois rond, depuis sa ligne la plus saillante."},
    {"Dimension line, extension line, leader", "Ligne de cote, ligne d’attache, ligne de repère"},
    {"Drawings show what was stated in the document and what follows from it, never an approval: loads, "
     "foundations, openings, fastenings and bearings are for local code and a licensed professional to "
     "decide.",
     "Les dessins montrent ce que le document indique et ce qui en découle, jamais une approbation : "
     "charges, fondations, ouvertures, attaches et appuis sont à décider par le code local et un "
     "professionnel agréé."},
    {"Drawings, cut sheets, templates and tags", "Dessins, fiches de taille, gabarits et repères"},
    {"Edge behind wood", "Arête derrière du bois"},
    {"Edge that is seen", "Arête vue"},
    {"End grain turned to you", "Bois de bout tourné vers vous"},
    {"Finished volume", "Volume fini"},
    {"Foundation; emphasis", "Fondation ; mise en évidence"},
    {"Hold-down rod", "Tirant d’ancrage"},
    {"Hole as found in old wood", "Trou trouvé dans le vieux bois"},
    {"How the sheets are read", "Comment lire les feuilles"},
    {"Index", "Table"},
    {"Legend", "Légende"},
    {"Lines", "Lignes"},
    {"Log cut through: it goes on toward you", "Pièce coupée : elle continue vers vous"},
    {"Log shell", "Coque de pièces"},
    {"Logs", "Pièces"},
    {"Marks", "Signes"},
    {"Never measure from paper, but for what is marked as full size: there check the bars first.",
     "Ne mesurez jamais sur le papier, sauf ce qui est marqué en vraie grandeur : vérifiez-y d’abord les "
     "barres."},
    {"Number of a cut, as in the list of cuts, in cutting order",
     "Numéro d’une taille, comme dans la liste des tailles, dans l’ordre d’exécution"},
    {"Outline of the blank where wood is taken off", "Contour de l’ébauche où du bois est enlevé"},
    {"Peg; P1, P2 … in its piece's table of bores",
     "Cheville ; P1, P2 … dans la table des perçages de sa pièce"},
    {"Pegs", "Chevilles"},
    {"Pocket for the end of a joist, beam or trimmer; K1, K2 … as in the table of pockets",
     "Mortaise pour le bout d’une solive, d’une poutre ou d’un chevêtre ; K1, K2 … comme dans la table des "
     "mortaises"},
    {"Rounds", "Rangs"},
    {"Rounds: a wall that starts with a half log has one log more than the others, and its last is counted "
     "as one round more than the shell has.",
     "Rangs : un mur qui commence par une demi-pièce a une pièce de plus que les autres, et sa dernière "
     "compte comme un rang de plus que n’en a la coque."},
    {"Running dimension: measured from the circle to the arrow, never from number to number",
     "Cote cumulée : mesurée du cercle à la flèche, jamais d’un nombre à l’autre"},
    {"Slopes are stated as rise to run and as the rise over the tail. \"Up\" is upward toward the log's end, "
     "or toward the outside.",
     "Les pentes sont dites en montée pour la longueur, et par la montée sur la queue. « Monte » va vers le "
     "haut en allant au bout de la pièce, ou vers l’extérieur."},
    {"Stands", "Se dresse"},
    {"Tag: wall letter, round, piece. C-07-2 is the second piece, from the left seen from outside, of round "
     "7 of wall C.",
     "Repère : lettre du mur, rang, pièce. C-07-2 est la deuxième pièce, depuis la gauche vue de "
     "l’extérieur, du rang 7 du mur C."},
    {"The faces of a log are drawn as they show when it is rolled a quarter turn each time; the datum end "
     "stays left.",
     "Les faces d’une pièce sont dessinées comme elles se montrent quand on la tourne chaque fois d’un quart "
     "de tour ; le bout d’origine reste à gauche."},
    {"The shell", "La coque"},
    {"Walls", "Murs"},
    {"Warnings of the check", "Avertissements de la vérification"},
    {"Way for wiring", "Passage de câble"},
    {"Weight, estimated", "Poids, estimé"},
    {"Where a long log is shortened (with a zigzag)", "Où une longue pièce est raccourcie (avec un zigzag)"},
    {"Wood", "Bois"},
    {"a tag with a QR code for every log", "un repère à code QR par pièce"},
    {"book of the shell", "livre de la coque"},
    {"cover, index, legend and all sheets of the shell",
     "couverture, table, légende et toutes les feuilles de la coque"},
    {"foundation, walls, sections, rounds and story poles", "fondation, murs, coupes, rangs et piges"},
    {"lines, marks and how the sheets are read", "lignes, signes et comment lire les feuilles"},
    {"logs in the reverse order of the raise, with weights",
     "les pièces dans l’ordre inverse du levage, avec les poids"},
    {"one cut sheet for each distinct piece", "une fiche de taille par pièce différente"},
    {"sheets and their pages in this book", "les feuilles et leurs pages dans ce livre"},
    {"story poles at full size", "piges en vraie grandeur"},
    {"tails, notches and pockets at full size", "queues, entailles et mortaises en vraie grandeur"},
    {"the cut sheet of %1", "la fiche de taille de %1"},
    {"the shell seen from the east", "la coque vue de l’est"},
    {"the shell seen from the north", "la coque vue du nord"},
    {"the shell seen from the north-east", "la coque vue du nord-est"},
    {"the shell seen from the north-west", "la coque vue du nord-ouest"},
    {"the shell seen from the plan", "la coque vue en plan"},
    {"the shell seen from the south", "la coque vue du sud"},
    {"the shell seen from the south-east", "la coque vue du sud-est"},
    {"the shell seen from the south-west", "la coque vue du sud-ouest"},
    {"the shell seen from the west", "la coque vue de l’ouest"},
};

} // namespace

std::span<const Entry> french_of_book() {
    return entries;
}

} // namespace roundlay
