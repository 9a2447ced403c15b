// Of field forms.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1, jamb towards %2", "%1, jambage vers %2"},
    {"3.10 is", "3.10 veut dire"},
    {"Field form, %1", "Fiche de relevé, %1"},
    {"Field forms", "Fiches de relevé"},
    {"Logs that the plan does not have", "Pièces que le plan n’a pas"},
    {"Of the tail: a at the shoulder on the outside face, b at its end there, c at the shoulder on the "
     "inside face, d at its end there; e overhang past the crossing wall; f gap under it. Of the corner: g "
     "height of its mark over the level plane, + up, - down; h and k how far the arris leans out at the top, "
     "- in, on the faces of walls %1 and %2; m the height that this is measured over. Where a log runs on: n "
     "its height, p its width there.",
     "De la queue : a à l’épaulement sur la face extérieure, b à son bout là, c à l’épaulement sur la face "
     "intérieure, d à son bout là ; e débord au-delà du mur croisé ; f jeu dessous. De l’angle : g hauteur "
     "de sa marque au-dessus du plan de niveau, + vers le haut, - vers le bas ; h et k faux aplomb de "
     "l’arête en haut vers l’extérieur, - vers l’intérieur, sur les faces des murs %1 et %2 ; m hauteur sur "
     "laquelle il est mesuré. Où une pièce continue : n sa hauteur, p sa largeur là."},
    {"Small figures under a box are proposed by the plan, nobody has measured them: measure, or leave the "
     "box empty. ≠: two measures differ, take it again.",
     "Les petits nombres sous une case sont proposés par le plan, personne ne les a mesurés : mesurez, ou "
     "laissez la case vide. ≠ : deux mesures diffèrent, reprenez-la."},
    {"Wall %1, %2", "Mur %1, %2"},
    {"a height and b width of the joist at the face of what it lies in; c how deep its end lies in there: "
     "look into the socket, or feel with a wire.",
     "a hauteur et b largeur de la solive à la face de ce qui la porte ; c profondeur de son bout là-dedans "
     ": regardez dans la mortaise, ou sondez avec un fil de fer."},
    {"a height and b width of the log, at its shoulder or where it ends at an opening; c length over all; d "
     "length between its shoulders; e places along the log, from the end that is ticked; f height of the log "
     "where a jamb meets it.",
     "a hauteur et b largeur de la pièce, à son épaulement ou là où elle finit à une ouverture ; c longueur "
     "hors tout ; d longueur entre ses épaulements ; e places le long de la pièce, depuis le bout coché ; f "
     "hauteur de la pièce là où un jambage la rencontre."},
    {"broken, sawn, at", "cassées, sciées, à"},
    {"checked", "fendu"},
    {"condition", "état"},
    {"condition, marks", "état, marques"},
    {"corner of one end", "angle d’un bout"},
    {"corner of the other end", "angle de l’autre bout"},
    {"decimal feet", "pieds décimaux"},
    {"e from", "e part de"},
    {"face inside", "face int."},
    {"face of wall %1", "face du mur %1"},
    {"face outside", "face ext."},
    {"feet.inches", "pieds.pouces"},
    {"field forms of every wall, corner and floor, to be filled in by hand",
     "fiches de relevé de chaque mur, angle et plancher, à remplir à la main"},
    {"from (e)", "de (e)"},
    {"from below up", "de bas en haut"},
    {"gap", "jeu"},
    {"how deep", "profondeur"},
    {"how water leaves it", "comment l’eau en sort"},
    {"its end at %1", "son bout à %1"},
    {"joint, note", "assemblage, note"},
    {"joists and what their ends lie in", "solives et ce qui porte leurs bouts"},
    {"lean, wall %1", "faux aplomb, %1"},
    {"level plane", "plan de niveau"},
    {"measured by", "mesuré par"},
    {"measured place", "place mesurée"},
    {"missing", "manquant"},
    {"more of", "suite de"},
    {"no tail: it ends square", "pas de queue : bout d’équerre"},
    {"no tail: its notch is scribed to the log below",
     "pas de queue : son entaille est tracée sur la pièce du dessous"},
    {"numbers are in", "les nombres sont en"},
    {"of walls %1 and %2", "des murs %1 et %2"},
    {"old marks", "vieilles marques"},
    {"on the day", "le"},
    {"on the face", "sur la face"},
    {"one end", "un"},
    {"other end", "autre"},
    {"over all", "hors tout"},
    {"over the height", "sur la hauteur"},
    {"over the plane", "au-dessus du plan"},
    {"overhang", "débord"},
    {"pegs found, at (e)", "chevilles en place, à (e)"},
    {"pegs from %1: %2", "chevilles depuis %1 : %2"},
    {"pegs missing, at", "manquantes, à"},
    {"proposed", "proposé"},
    {"rotten", "pourri"},
    {"runs on past the corner", "continue au-delà de l’angle"},
    {"runs on: its measures stand on the form of its wall",
     "continue : ses mesures sont sur la fiche de son mur"},
    {"seen from %1", "vu %1"},
    {"seen from inside", "vu de l’intérieur"},
    {"seen from outside", "vu de l’extérieur"},
    {"sheet %1", "feuille %1"},
    {"shoulder, end", "épaulement, bout"},
    {"shoulders", "épaulements"},
    {"soft", "mou"},
    {"sound", "sain"},
    {"tag, proposed", "rep. proposé"},
    {"tag: %1", "repère : %1"},
    {"tail, inside face", "queue, face intérieure"},
    {"tail, outside face", "queue, face extérieure"},
    {"the 1 of 3.10.1 is", "le 1 de 3.10.1 vaut"},
    {"thick end", "pied"},
    {"to (e)", "à (e)"},
    {"under it", "dessous"},
    {"which plane", "quel plan"},
};

} // namespace

std::span<const Entry> french_of_forms() {
    return entries;
}

} // namespace roundlay
