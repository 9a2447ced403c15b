// Of drawings: plans, elevations, sections, story poles.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {" Gap between logs %1.", " Jeu entre les pièces %1."},
    {" In a row of their own, from the same faces: middles of what comes out of the foundation. Disc: rod; "
     "hexagon: bolt; circle crossed out: wiring.",
     " Sur une ligne à part, depuis les mêmes faces : milieux de ce qui sort de la fondation. Disque : "
     "tirant ; hexagone : boulon ; cercle barré : câblage."},
    {" Left: tops of the logs at their left ends; right: openings and steps; all over the lowest foundation.",
     " À gauche : hauts des pièces à leurs bouts gauches ; à droite : ouvertures et ressauts ; tout depuis "
     "la fondation la plus basse."},
    {" Left: tops of the logs; right: undersides; over the foundation.",
     " À gauche : hauts des pièces ; à droite : dessous ; depuis la fondation."},
    {" Middles of what comes out of the foundation: in the table. Disc: rod; hexagon: bolt; circle crossed "
     "out: wiring.",
     " Milieux de ce qui sort de la fondation : dans la table. Disque : tirant ; hexagone : boulon ; cercle "
     "barré : câblage."},
    {" The wall has %1 logs, one on another, and stands %2 high; %3 rounds are %4.",
     " Le mur a %1 pièces l’une sur l’autre et est haut de %2 ; %3 rangs font %4."},
    {"%1 %2 × %3 at %4", "%1 %2 × %3 à %4"},
    {"%1 (%2 deep)", "%1 (profondeur %2)"},
    {"%1 before it", "%1 avant lui"},
    {"%1 from the left", "%1 depuis la gauche"},
    {"%1 to the left", "%1 vers la gauche"},
    {"%1 to the right", "%1 vers la droite"},
    {"A round", "Un rang"},
    {"A section", "Une coupe"},
    {"All corners, outside and inside, from the outermost faces in the west and in the south.",
     "Tous les angles, dehors et dedans, depuis les faces extrêmes à l’ouest et au sud."},
    {"Arrows at the tags point from butt to tip. Circles are pegs driven through these logs; a disc is a "
     "rod, a hexagon a bolt, a circle crossed out wiring, a dashed one a hole as found. Wall lengths are "
     "over the outside faces.",
     "Les flèches des repères vont du gros bout au petit. Les cercles sont des chevilles à travers ces "
     "pièces ; un disque est un tirant, un hexagone un boulon, un cercle barré un câblage, un cercle en "
     "tirets un trou trouvé. Les longueurs des murs sont hors tout."},
    {"Bears on", "Appui de"},
    {"Bore", "Perçage"},
    {"Bores of this wall, but for pegs", "Perçages de ce mur, sauf les chevilles"},
    {"Butt, from outside", "Gros bout, de l’extérieur"},
    {"Clear spans", "Portées libres"},
    {"Corner %1", "Angle %1"},
    {"Depth from the top", "Profondeur depuis le dessus"},
    {"Drift each round", "Décalage par rang"},
    {"Floor %1", "Plancher %1"},
    {"Floors", "Planchers"},
    {"Foundation and sills", "Fondation et pièces de seuil"},
    {"Foundation plan", "Plan de fondation"},
    {"From left corner", "De l’angle gauche"},
    {"From outside face", "De la face extérieure"},
    {"From the left outside corner, seen from outside", "Depuis l’angle extérieur gauche, vu de l’extérieur"},
    {"Height", "Hauteur"},
    {"Heights over the foundation. Left: seams, at the arris where the outside faces of the two walls meet, "
     "with the lower and the upper log. Right: tops of logs.",
     "Hauteurs depuis la fondation. À gauche : joints, à l’arête où se rencontrent les faces extérieures des "
     "deux murs, avec la pièce du dessous et celle du dessus. À droite : hauts des pièces."},
    {"Heights over the foundation. Right: tops of the logs; each is scribed to those it lies on.",
     "Hauteurs depuis la fondation. À droite : hauts des pièces ; chacune est tracée sur celles où elle "
     "repose."},
    {"Joist plan", "Plan des solives"},
    {"LL, round %1", "LN, rang %1"},
    {"Length", "Longueur"},
    {"Log", "Pièce"},
    {"Logs too small here for their tags, from left to right",
     "Pièces trop petites ici pour leurs repères, de gauche à droite"},
    {"Mark", "Signe"},
    {"Name", "Nom"},
    {"Openings too small here for their names and sizes, places from the left",
     "Ouvertures trop petites ici pour leurs noms et cotes, places depuis la gauche"},
    {"Pegs are bored in place, as each log is laid: no sheet has their holes. The elevation of each wall has "
     "their places.",
     "Les chevilles sont percées en place, quand chaque pièce est posée : aucune feuille ne montre leurs "
     "trous. L’élévation de chaque mur donne leur place."},
    {"Pegs of this wall, bored in place, of %1", "Chevilles de ce mur, percées en place, de %1"},
    {"Printed as", "Imprimé comme"},
    {"Rods, bolts and wiring that come out of the foundation",
     "Tirants, boulons et câblage qui sortent de la fondation"},
    {"Round %1", "Rang %1"},
    {"Round plan", "Plan de rang"},
    {"Rounds %1 to %2", "Rangs %1 à %2"},
    {"Section", "Coupe"},
    {"Section %1", "Coupe %1"},
    {"Sections", "Coupes"},
    {"Sill logs, bedded on the foundation", "Pièces de seuil, posées sur la fondation"},
    {"Step", "Ressaut"},
    {"Steps of the foundation", "Ressauts de la fondation"},
    {"Story pole", "Pige"},
    {"Story pole, corners %1", "Pige, angles %1"},
    {"Story poles", "Piges"},
    {"Story poles, full size", "Piges, vraie grandeur"},
    {"Tags that found no room here", "Repères sans place ici"},
    {"The plan", "Le plan"},
    {"The story pole", "La pige"},
    {"The tops of the joists lie %1 over the foundation. Across: middles of the joists from the room's left "
     "side. Upward: middles of beams and trimmers from wall %2. A drawn span is no approval: local code and "
     "a licensed professional decide.",
     "Le dessus des solives est à %1 de la fondation. En travers : milieux des solives depuis le côté gauche "
     "de la pièce habitée. Vers le haut : milieux des poutres et chevêtres depuis le mur %2. Une portée "
     "dessinée n’est pas une approbation : le code local et un professionnel agréé décident."},
    {"Through round", "À travers le rang"},
    {"Timbers of this floor", "Bois de ce plancher"},
    {"Timbers with no room here for their tags", "Bois sans place ici pour leurs repères"},
    {"To", "À"},
    {"Wall", "Mur"},
    {"Wall %1", "Mur %1"},
    {"Wall %1, from %2, %3", "Mur %1, vu %2, %3"},
    {"Wall %1, from inside, %2", "Mur %1, de l’intérieur, %2"},
    {"Wall %1, from outside, %2", "Mur %1, de l’extérieur, %2"},
    {"Wall elevation", "Élévation de mur"},
    {"What", "Quoi"},
    {"Width", "Largeur"},
    {"also %1", "aussi %1"},
    {"diagonal %1", "diagonale %1"},
    {"each its own", "chacune la sienne"},
    {"elevations from %1 and %2", "élévations vues %1 et %2"},
    {"elevations from outside and inside", "élévations de l’extérieur et de l’intérieur"},
    {"from %1", "depuis %1"},
    {"heights at every corner", "hauteurs à chaque angle"},
    {"its joists from above", "ses solives vues de dessus"},
    {"log %1", "pièce %1"},
    {"outlines of the walls on it", "contours des murs dessus"},
    {"plan of its logs from above", "plan de ses pièces vues de dessus"},
    {"plans of their logs from above", "plans de leurs pièces vues de dessus"},
    {"seam %1", "joint %1"},
    {"seen toward the wall's left end", "vues vers le bout gauche du mur"},
    {"the east", "de l’est"},
    {"the north", "du nord"},
    {"the north-east", "du nord-est"},
    {"the north-west", "du nord-ouest"},
    {"the south", "du sud"},
    {"the south-east", "du sud-est"},
    {"the south-west", "du sud-ouest"},
    {"the west", "de l’ouest"},
    {"through %1", "par %1"},
    {"through door", "par la porte"},
    {"through the wall", "par le mur"},
    {"through window", "par la fenêtre"},
    {"turned over %1", "retourné %1"},
};

} // namespace

std::span<const Entry> french_of_drawings() {
    return entries;
}

} // namespace roundlay
