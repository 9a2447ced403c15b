// Of templates cut out by a router.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 has an inner room that no tool of 1 mm or more gets into: it is left out, and is cut by hand from "
     "the sheets",
     "%1 a un creux où n’entre aucun outil de 1 mm ou plus : il est laissé de côté et se découpe à la main "
     "d’après les feuilles"},
    {"%1 has no room for two tabs %2 wide beside the tool of %3: narrower tabs or a thinner tool are needed",
     "%1 n’a pas la place de deux attaches larges de %2 à côté de l’outil de %3 : il faut des attaches plus "
     "étroites ou un outil plus mince"},
    {"%1 inner {corner keeps|corners keep} the tool's radius, see corners.csv: to be pared by hand",
     "%1 {angle rentrant garde|angles rentrants gardent} le rayon de l’outil, voir corners.csv : à finir à "
     "la main"},
    {"%1 tabs: %2 to %3 are needed, or a template that comes loose is thrown by the tool",
     "%1 {attache|attaches} : il en faut %2 à %3, sinon un gabarit qui se détache est projeté par l’outil"},
    {"%1 turned over", "%1 retourné"},
    {"%1: templates, board %2 of %3", "%1 : gabarits, panneau %2 sur %3"},
    {"Board %1 by %2, %3 thick, its length along X. Zero: its lower left corner, Z at its top.",
     "Panneau de %1 sur %2, épais de %3, sa longueur le long de X. Zéro : son angle inférieur gauche, Z sur "
     "son dessus."},
    {"CAUTION: try this program in a simulator and in the air before it cuts. It knows nothing of your "
     "machine, your clamps and your wood; speeds and depths are those that were stated. Whoever runs the "
     "machine answers for it.",
     "ATTENTION : essayez ce programme dans un simulateur et dans l’air avant qu’il ne coupe. Il ne sait "
     "rien de votre machine, de vos brides ni de votre bois ; vitesses et profondeurs sont celles qui ont "
     "été indiquées. Qui conduit la machine en répond."},
    {"Each template is held by tabs %1 wide and %2 high: cut them when the board is off the machine.",
     "Chaque gabarit est tenu par des attaches larges de %1 et hautes de %2 : à couper quand le panneau "
     "n’est plus sur la machine."},
    {"Holes are cut before the outline, through and from their middle outward; nothing is left standing in "
     "them.",
     "Les trous sont coupés avant le contour, de part en part et du milieu vers l’extérieur ; rien n’y reste "
     "debout."},
    {"Marks of shoulders and level lines are grooves %1 deep and as wide as the tool: the line is their "
     "middle.",
     "Les repères des épaulements et des lignes de niveau sont des rainures profondes de %1 et larges comme "
     "l’outil : la ligne est leur milieu."},
    {"Numbers are millimetres (G21), whatever the document is in.",
     "Les nombres sont des millimètres (G21), quelles que soient les unités du document."},
    {"Round each template clockwise. The program does not wait for the spindle: it must run at its speed "
     "before the first cut.",
     "Autour de chaque gabarit dans le sens des aiguilles d’une montre. Le programme n’attend pas la broche "
     ": elle doit tourner à sa vitesse avant la première coupe."},
    {"Stated: feed %1 a minute, plunge %2 a minute, spindle %3 turns a minute, passes of at most %4.",
     "Indiqué : avance %1 par minute, plongée %2 par minute, broche %3 tours par minute, passes d’au plus "
     "%4."},
    {"The deepest cut is %1 below the top, %2 into what the board lies on; the tool moves from place to "
     "place %3 over the top.",
     "La coupe la plus profonde est à %1 sous le dessus, à %2 dans ce qui porte le panneau ; l’outil se "
     "déplace à %3 au-dessus."},
    {"Tool: straight, %1, cuts to its centre: it goes straight down. Its radius is in the path.",
     "Outil : droit, %1, coupe jusqu’au centre : il descend tout droit. Son rayon est dans le parcours."},
    {"X%1 Y%2: %3", "X%1 Y%2 : %3"},
    {"a board of %1 by %2, %3 thick, is none: each must be over 0",
     "un panneau de %1 sur %2, épais de %3, n’en est pas un : chaque mesure doit dépasser 0"},
    {"a board of templates for a router, millimetres; to be tried in the air first",
     "un panneau de gabarits pour une défonceuse, millimètres ; à essayer d’abord dans l’air"},
    {"a cut of %1 below the board: 0 to %2 is needed", "une coupe de %1 sous le panneau : il faut 0 à %2"},
    {"a depth step of %1 never gets through: %2 or more is needed",
     "une profondeur de passe de %1 ne traverse jamais : il faut %2 ou plus"},
    {"a feed of %1 a minute: over 0 and at most %2 is needed",
     "une avance de %1 par minute : il faut plus de 0 et au plus %2"},
    {"a margin of %1 leaves no board beside the groove of a tool of %2: %3 is needed",
     "une marge de %1 ne laisse pas de panneau à côté de la rainure d’un outil de %2 : il faut %3"},
    {"a plunge feed of %1 a minute: over 0 and at most %2 is needed",
     "une avance de plongée de %1 par minute : il faut plus de 0 et au plus %2"},
    {"a spindle that turns %1 times a minute: 1 to %2 is needed",
     "une broche à %1 tours par minute : il faut 1 à %2"},
    {"a tool of %1 does not cut templates: %2 to %3 is needed",
     "un outil de %1 ne taille pas de gabarits : il faut %2 à %3"},
    {"inner corners that keep the tool's radius", "angles rentrants qui gardent le rayon de l’outil"},
    {"marks %1 deep are more than one pass takes off: at most %2 is needed",
     "des repères profonds de %1 sont plus que n’enlève une passe : il faut au plus %2"},
    {"marks %1 deep: over 0 and at most half of the board's thickness is needed",
     "des repères profonds de %1 : il faut plus de 0 et au plus la moitié de l’épaisseur du panneau"},
    {"no board is stated: its length, width and thickness are needed",
     "aucun panneau n’est indiqué : il faut sa longueur, sa largeur et son épaisseur"},
    {"no depth step is stated: how much one pass may take off is needed",
     "aucune profondeur de passe n’est indiquée : il faut ce qu’une passe peut enlever"},
    {"no feed is stated: how far the tool may go along in a minute is needed",
     "aucune avance n’est indiquée : il faut le chemin que l’outil peut faire en une minute"},
    {"no plunge feed is stated: how far the tool may go down in a minute is needed",
     "aucune avance de plongée n’est indiquée : il faut ce que l’outil peut descendre en une minute"},
    {"no router program was made: %1", "aucun programme de défonceuse n’a été fait : %1"},
    {"no router program was made: this shell has no templates",
     "aucun programme de défonceuse n’a été fait : cette coque n’a pas de gabarits"},
    {"no spindle speed is stated: turns a minute are needed",
     "aucune vitesse de broche n’est indiquée : il faut les tours par minute"},
    {"no tool is stated: its diameter is needed", "aucun outil n’est indiqué : il faut son diamètre"},
    {"router", "défonceuse"},
    {"router/board-1.nc, programs that cut the templates out of boards, by what is stated of board, tool and "
     "speeds; only where it is asked for",
     "router/board-1.nc, programmes qui découpent les gabarits dans des panneaux, selon ce qui est indiqué "
     "du panneau, de l’outil et des vitesses ; seulement à la demande"},
    {"tabs %1 high: over 0 and less than the board is thick is needed",
     "des attaches hautes de %1 : il faut plus de 0 et moins que l’épaisseur du panneau"},
    {"tabs %1 wide hold nothing: %2 or more is needed",
     "des attaches larges de %1 ne tiennent rien : il faut %2 ou plus"},
    {"templates %1 apart leave no board between the grooves of a tool of %2: %3 is needed",
     "des gabarits à %1 l’un de l’autre ne laissent pas de panneau entre les rainures d’un outil de %2 : il "
     "faut %3"},
    {"the board of %1 by %2 is smaller than %3, which is %4 by %5: with its margins a board of %6 by %7 is "
     "needed",
     "le panneau de %1 sur %2 est plus petit que %3, qui fait %4 sur %5 : avec ses marges, il faut un "
     "panneau de %6 sur %7"},
    {"the hole of %1 in %2 is narrower than the tool of %3: it is left out, and is bored by hand from the "
     "sheets",
     "le trou de %1 dans %2 est plus étroit que l’outil de %3 : il est laissé de côté et se perce à la main "
     "d’après les feuilles"},
    {"the hole of %1 in %2 leaves less than %3 of board beside it: it is left out, and is bored by hand from "
     "the sheets",
     "le trou de %1 dans %2 laisse moins de %3 de panneau à côté de lui : il est laissé de côté et se perce "
     "à la main d’après les feuilles"},
    {"the outline of %1 crosses itself or has no inside: it cannot be cut out",
     "le contour de %1 se croise ou n’a pas d’intérieur : il ne peut être découpé"},
    {"the safe height of %1 lies below the board’s top or on it, and rapid moves would run through wood: %2 "
     "or more is needed, and more than the clamps stand up",
     "la hauteur de sécurité de %1 est sous le dessus du panneau ou dessus, et les déplacements rapides "
     "passeraient dans le bois : il faut %2 ou plus, et plus que la hauteur des brides"},
    {"the tool of %1 is thicker than the narrowest inner room of %2: a tool of at most %3 is needed",
     "l’outil de %1 est plus épais que le plus étroit des creux de %2 : il faut un outil d’au plus %3"},
    {"which template lies where on which board", "quel gabarit est où sur quel panneau"},
};

} // namespace

std::span<const Entry> french_of_router() {
    return entries;
}

} // namespace roundlay
