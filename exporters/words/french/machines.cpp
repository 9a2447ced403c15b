// Of machines and what they make.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 by %2 by %3", "%1 sur %2 sur %3"},
    {"%1 is missing", "%1 manque"},
    {"%1 is none of %2", "%1 n’est pas parmi %2"},
    {"%1 long, %2 across", "%1 de long, %2 de diamètre"},
    {"%1 must be a length over 0 with its unit, such as \"400 mm\" or \"16 in\"",
     "%1 doit être une longueur de plus de 0 avec son unité, comme \"400 mm\" ou \"16 in\""},
    {"%1 must be a list of words in [brackets]", "%1 doit être une liste de mots entre [crochets]"},
    {"%1 must be a name in quotes", "%1 doit être un nom entre guillemets"},
    {"%1 must be a number from %2 to %3", "%1 doit être un nombre de %2 à %3"},
    {"%1 must be a table", "%1 doit être une table"},
    {"%1 under its datum end", "%1 sous son bout d’origine"},
    {"%1 under its far end", "%1 sous son bout opposé"},
    {"%1, which is round", "%1, qui est rond"},
    {"%1: of %2 distinct pieces %3 makeable, %4 with hand finishing, %5 not",
     "%1 : sur %2 pièces différentes, %3 faisables, %4 avec finition à la main, %5 non"},
    {"Alike", "Pareilles"},
    {"Clamp at x", "Brider à x"},
    {"Face up", "Face en haut"},
    {"Flats", "Méplats"},
    {"For the chisel, cm3", "Au ciseau, cm3"},
    {"It asks what straight tools get to, by reach, shape and tilt; it knows nothing of clamps, forces and "
     "of what a tool's holder meets beside the log.",
     "On y demande ce qu’atteignent des outils droits, par portée, forme et inclinaison ; rien n’y est su "
     "des brides, des efforts ni de ce que le porte-outil rencontre à côté de la pièce."},
    {"Keep clear at x", "Laisser libre à x"},
    {"Lies", "Position"},
    {"Of that in this corner", "Dont dans cet angle"},
    {"Operation", "Opération"},
    {"Operations", "Opérations"},
    {"Operations, in working order", "Opérations, dans l’ordre du travail"},
    {"Packing", "Calage"},
    {"Radius", "Rayon"},
    {"Reach", "Portée"},
    {"Remark", "Remarque"},
    {"Round stick", "Bois rond"},
    {"Set-up", "Prise"},
    {"Set-ups", "Prises"},
    {"Set-ups at least", "Prises au moins"},
    {"Squared stick", "Bois équarri"},
    {"Stock", "Bois de départ"},
    {"The weight of some sticks is not known, and was not held against the machine.",
     "Le poids de certains bois n’est pas connu, et n’a pas été comparé à la machine."},
    {"Tilt", "Inclinaison"},
    {"Tilt, reach", "Inclinaison, portée"},
    {"To be read so", "Comment lire"},
    {"Tried, and would do", "Essayé, et conviendrait"},
    {"Verdict", "Verdict"},
    {"Where they cut", "Où elles coupent"},
    {"Why not", "Pourquoi pas"},
    {"Within", "Tolérance"},
    {"a corner keeps a radius of %1", "un angle garde un rayon de %1"},
    {"a corner of less than a right angle stays full", "un angle de moins d’un angle droit reste plein"},
    {"a machine without a [saw] and without a [[tool]] makes nothing",
     "une machine sans [saw] et sans [[tool]] ne fait rien"},
    {"at least, of a straight tool from that side: the tilt at which its end or its flank lies on all faces "
     "of the cut, and the reach straight in from the stock; tilted, it needs more",
     "au moins, d’un outil droit depuis ce côté : l’inclinaison à laquelle son bout ou son flanc porte sur "
     "toutes les faces de la coupe, et la portée tout droit depuis le bois ; incliné, il en faut davantage"},
    {"between which the cut takes wood of the stock, told outward to whole steps: not to be set out by. The "
     "file beside it has planes and axes.",
     "entre lesquels la coupe prend du bois, donnés vers l’extérieur en pas entiers : ne pas tracer d’après "
     "eux. Le fichier joint a les plans et les axes."},
    {"each tool is a table of its own: [[tool]]", "chaque outil est une table à lui : [[tool]]"},
    {"grooves for splines %1 wide", "des rainures de languette larges de %1"},
    {"however it is tilted, no straight tool lies on all of its faces",
     "aussi incliné qu’il soit, aucun outil droit ne porte sur toutes ses faces"},
    {"it is reached from the %1, where the machine does not work",
     "il s’atteint par ce côté : %1, où la machine ne travaille pas"},
    {"it needs a cut %1 deep, and the saw cuts %2", "il faut une coupe profonde de %1, et la scie coupe %2"},
    {"it needs a reach of %1 from the %2, and the tool %3 has %4",
     "il faut une portée de %1 (côté : %2), et l’outil %3 a %4"},
    {"it needs a saw tilted by %1 degrees, and the saw tilts by %2",
     "il faut une scie inclinée de %1 degrés, et la scie incline de %2"},
    {"it needs a tool tilted by %1 degrees, and the machine tilts by %2",
     "il faut un outil incliné de %1 degrés, et la machine incline de %2"},
    {"its bore is %1 wide and the cutter %2 is %3", "son perçage est de %1 et la fraise %2 de %3"},
    {"its bore is %1 wide and the drill %2 is %3", "son perçage est de %1 et la mèche %2 de %3"},
    {"its bottom keeps the waves of the chain's nose, to be pared",
     "son fond garde les vagues du nez de la chaîne, à dresser"},
    {"its room is %1 wide and the tool %2 is %3", "son creux est large de %1 et l’outil %2 de %3"},
    {"its room is narrower than the chain %1, which is %2 by %3",
     "son creux est plus étroit que la chaîne %1, qui fait %2 sur %3"},
    {"its round has a radius of %1 and the tool %2 one of %3",
     "son arrondi a un rayon de %1 et l’outil %2 un rayon de %3"},
    {"its slopes stay in steps of %1, to be pared", "ses pentes restent en gradins de %1, à dresser"},
    {"its stick is %1 by %2 and the machine takes %3 by %4",
     "son bois fait %1 sur %2 et la machine prend %3 sur %4"},
    {"its stick is %1 long and the bed %2: a bed of %1 is needed",
     "son bois est long de %1 et le banc de %2 : il faut un banc de %1"},
    {"its stick may weigh %1 kg and the machine bears %2 kg",
     "son bois peut peser %1 kg et la machine porte %2 kg"},
    {"level laps instead of tails, held by pegs alone",
     "des entailles à mi-bois de niveau au lieu de queues, tenues par les seules chevilles"},
    {"makeable", "faisable"},
    {"makeable with hand finishing", "faisable avec finition à la main"},
    {"no flat faces: for the shop to say", "pas de faces planes : à l’atelier de le dire"},
    {"no sheets of operations were made: all pieces are old wood that stays",
     "aucune fiche d’opérations n’a été faite : toutes les pièces sont du bois ancien qui reste"},
    {"no stretch long enough: for the shop to say", "aucun tronçon assez long : à l’atelier de le dire"},
    {"not makeable", "non faisable"},
    {"nothing", "rien"},
    {"of the finished piece, as they are called in its STEP file",
     "de la pièce finie, comme les nomme son fichier STEP"},
    {"only a chain has a thickness", "seule une chaîne a une épaisseur (thickness)"},
    {"pegs and bores of %1", "des chevilles et des perçages de %1"},
    {"plain pockets for the joists", "des mortaises droites pour les solives"},
    {"plus or minus, a proposal that rests on no standard",
     "en plus ou en moins, une proposition qui ne repose sur aucune norme"},
    {"round faces are cut by a ball-ended tool alone, and there is none that does",
     "seul un outil à bout sphérique taille les faces rondes, et aucun ne convient"},
    {"saw", "scie"},
    {"tails that slope by 1:%1", "des queues inclinées de 1:%1"},
    {"the bed is %1 long, shorter than every log: the shortest stick is %2 and the longest %3 long; a bed of "
     "%3 takes them all",
     "le banc est long de %1, plus court que toute pièce : le bois le plus court fait %2 et le plus long %3 "
     "; un banc de %3 les prend tous"},
    {"the least of an inner corner along the tool; 0: sharp, and a chisel's where the tool is round",
     "le plus petit d’un angle rentrant le long de l’outil ; 0 : vif, et au ciseau si l’outil est rond"},
    {"the machine may not make such a cut", "la machine ne doit pas faire cette sorte de coupe"},
    {"the tool %1 is %2 long and reaches %3: no tool cuts deeper than it reaches; a reach of %2 or more is "
     "needed, or shorter edges",
     "l’outil %1 est long de %2 et sa portée est de %3 : aucun outil ne coupe plus profond que sa portée ; "
     "il faut une portée d’au moins %2, ou des arêtes plus courtes"},
    {"there is no key %1 here; did you mean %2?", "il n’y a pas ici de clé %1 ; vouliez-vous dire %2 ?"},
    {"there is no key %1 here; there are %2", "il n’y a pas ici de clé %1 ; il y a %2"},
    {"there is no tool whose shape makes it", "il n’y a pas d’outil dont la forme le permette"},
    {"x along the log from its datum end, y from its outside face to its inside face, z up as it lies in the "
     "house; one corner of the stick at x %1, y %2, z %3",
     "x le long de la pièce depuis son bout d’origine, y de sa face extérieure à sa face intérieure, z vers "
     "le haut comme elle est posée dans la maison ; un coin du bois à x %1, y %2, z %3"},
    {"x, y, z", "x, y, z"},
};

} // namespace

std::span<const Entry> french_of_machines() {
    return entries;
}

} // namespace roundlay
