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
    {"Of an opening, on the outside face, along the wall from the corner that is named: 1 to its near jamb "
     "at the sill, 2 at the head, 3 to its far jamb at the sill, 4 at the head; 5 its width and 6 its "
     "height, clear; 7 level of its underside and 8 of its top over the level plane, + up, - down.",
     "D’une ouverture, sur la face extérieure, le long du mur depuis l’angle nommé : 1 jusqu’au jambage "
     "proche à l’appui, 2 au linteau, 3 jusqu’au jambage loin à l’appui, 4 au linteau ; 5 sa largeur et 6 sa "
     "hauteur, libres ; 7 niveau de son dessous et 8 de son dessus au-dessus du plan de niveau, + vers le "
     "haut, - vers le bas."},
    {"Of the tail, or of the notch of a log that runs past: n at the shoulder on the outside face, p at its "
     "end there, q at the shoulder on the inside face, r at its end there; s overhang past the crossing "
     "wall; t gap under it. Of the corner: u height over the level plane, + up, - down, of a mark on its "
     "arris (a nail, or a line that stays); v and w how far the arris leans at the top, + out of the wall, - "
     "into it, on the faces of walls %1 and %2; x the height that this is measured over. What another log "
     "hides stays empty until it is open.",
     "De la queue, ou de l’entaille d’une pièce qui dépasse : n à l’épaulement sur la face extérieure, p à "
     "son bout là, q à l’épaulement sur la face intérieure, r à son bout là ; s débord au-delà du mur croisé "
     "; t jour dessous. De l’angle : u hauteur au-dessus du plan de niveau, + vers le haut, - vers le bas, "
     "d’une marque sur son arête (un clou, ou un trait qui reste) ; v et w faux aplomb de l’arête en haut, + "
     "vers le dehors, - vers le mur, sur les faces des murs %1 et %2 ; x hauteur sur laquelle il est mesuré. "
     "Ce qu’une autre pièce cache reste vide jusqu’à l’ouverture."},
    {"Small figures under a box are proposed by the plan, nobody has measured them: measure, or leave the "
     "box empty. ≠: two measures differ, take it again.",
     "Les petits nombres sous une case sont proposés par le plan, personne ne les a mesurés : mesurez, ou "
     "laissez la case vide. ≠ : deux mesures diffèrent, reprenez-la."},
    {"The house", "La maison"},
    {"Wall %1, %2", "Mur %1, %2"},
    {"Walls from outside corner to outside corner, or, ticked, from inside corner to inside corner; "
     "diagonals the same; a partition between the faces of the two walls that it runs between. A level plane "
     "is told apart by its name, and marked on the house; a second one says how much higher it lies than the "
     "first.",
     "Murs d’angle extérieur à angle extérieur ou, si coché, d’angle intérieur à angle intérieur ; "
     "diagonales de même ; une cloison entre les faces des deux murs qu’il relie. Un plan de niveau se "
     "reconnaît à son nom, et se marque sur la maison ; un deuxième dit de combien il est plus haut que le "
     "premier."},
    {"Where a log runs on: y its height, z its width there.",
     "Où une pièce continue : y sa hauteur, z sa largeur là."},
    {"a height and b width of the joist at the face of what it lies in; j how deep its end lies in there: "
     "look into the socket, or feel with a wire.",
     "a hauteur et b largeur de la solive à la face de ce qui la porte ; j profondeur de son bout là-dedans "
     ": regardez dans la mortaise, ou sondez avec un fil de fer."},
    {"a height and b width of the log, at its shoulder or where it ends at an opening; c length over all; d "
     "length between its shoulders; e places along the log, from the end that is ticked; f height of the log "
     "where a jamb meets it; g level of its top at each end over the level plane, + up, - down; h gap to the "
     "log under it, at mid-length; i bow, and the face that it bows out to; k wind, how far an edge at one "
     "end stands out of the plane of the other; of pegs that do not hold: m missing, b broken, s sawn. What "
     "a frame or another log hides stays empty until it is open.",
     "a hauteur et b largeur de la pièce, à son épaulement ou là où elle finit à une ouverture ; c longueur "
     "hors tout ; d longueur entre ses épaulements ; e places le long de la pièce, depuis le bout coché ; f "
     "hauteur de la pièce là où un jambage la rencontre ; g niveau de son dessus à chaque bout au-dessus du "
     "plan de niveau, + vers le haut, - vers le bas ; h jour jusqu’à la pièce du dessous, au milieu ; i "
     "cintrage, et la face vers laquelle elle est cintrée ; k gauchissement, de combien une arête à un bout "
     "sort du plan de l’autre ; des chevilles qui ne tiennent pas : m manquante, c cassée, s sciée. Ce qu’un "
     "cadre ou une autre pièce cache reste vide jusqu’à l’ouverture."},
    {"b (broken)", "c (cassée)"},
    {"bow", "cintrage"},
    {"bows out to", "cintrée vers"},
    {"checked", "fissuré"},
    {"condition", "état"},
    {"condition, marks", "état, marques"},
    {"corner of one end", "angle d’un bout"},
    {"corner of the other end", "angle de l’autre bout"},
    {"corners", "angles"},
    {"decimal feet", "pieds décimaux"},
    {"draw an arrow to the north", "tracez une flèche vers le nord"},
    {"e from", "e part de"},
    {"face inside", "face int."},
    {"face of wall %1", "face du mur %1"},
    {"face outside", "face ext."},
    {"far jamb, head", "loin, au linteau"},
    {"far jamb, sill", "loin, à l’appui"},
    {"feet.inches", "pieds.pouces"},
    {"field forms of every wall, corner and floor, to be filled in by hand",
     "fiches de relevé de chaque mur, angle et plancher, à remplir à la main"},
    {"from (e)", "de (e)"},
    {"from below up", "de bas en haut"},
    {"from corner", "depuis l’angle"},
    {"gap", "jour"},
    {"gap under it", "jour dessous"},
    {"how deep", "profondeur"},
    {"how exact, and how it was measured", "exactitude, et moyens de mesure"},
    {"how water leaves it", "comment l’eau en sort"},
    {"its end at %1", "son bout à %1"},
    {"its marks on the house", "ses marques sur la maison"},
    {"joint, note", "assemblage, note"},
    {"joists and what their ends lie in", "solives et ce qui porte leurs bouts"},
    {"later cut, replaces", "coupe, remplace"},
    {"lean, wall %1", "faux aplomb, %1"},
    {"level at %1", "niveau à %1"},
    {"level of the head", "niveau du linteau"},
    {"level of the sill", "niveau de l’appui"},
    {"level plane", "plan de niveau"},
    {"m (missing)", "m (manquante)"},
    {"measured by", "mesuré par"},
    {"measured place", "place mesurée"},
    {"missing", "manquant"},
    {"moisture, deep, at", "humidité, prof., à"},
    {"more of", "suite de"},
    {"near jamb, head", "proche, au linteau"},
    {"near jamb, sill", "proche, à l’appui"},
    {"no tail: it ends square", "pas de queue : bout d’équerre"},
    {"no tail: its notch is scribed to the log below",
     "pas de queue : son entaille est tracée sur la pièce du dessous"},
    {"numbers are in", "les nombres sont en"},
    {"of walls %1 and %2", "des murs %1 et %2"},
    {"old marks", "marques"},
    {"on the day", "le"},
    {"on the face", "sur la face"},
    {"one", "un"},
    {"one end", "un"},
    {"other", "autre"},
    {"other end", "autre"},
    {"over all", "hors tout"},
    {"over the first", "sur le premier"},
    {"over the height", "sur la hauteur"},
    {"over the plane", "au-dessus du plan"},
    {"overhang", "débord"},
    {"pegs found, at (e)", "chevilles en place, à (e)"},
    {"pegs from %1: %2", "chevilles depuis %1 : %2"},
    {"pegs m, b or s, at (e)", "chev. m, c ou s, à (e)"},
    {"plane", "plan"},
    {"proposed", "proposé"},
    {"read from", "lu depuis"},
    {"replaces %1", "remplace %1"},
    {"rotten", "pourri"},
    {"runs on past the corner", "continue au-delà de l’angle"},
    {"runs on: its measures stand on the form of its wall",
     "continue : ses mesures sont sur la fiche de son mur"},
    {"s (sawn)", "s (sciée)"},
    {"seen from %1", "vu %1"},
    {"seen from inside", "vu de l’intérieur"},
    {"seen from outside", "vu de l’extérieur"},
    {"sheet %1", "feuille %1"},
    {"shoulder, end", "épaulement, bout"},
    {"shoulders", "épaulements"},
    {"soft", "mou"},
    {"sound", "sain"},
    {"species", "essence"},
    {"tag, proposed", "rep. proposé"},
    {"tag: %1", "repère : %1"},
    {"tail, inside face", "queue, face intérieure"},
    {"tail, outside face", "queue, face extérieure"},
    {"the 1 of 3.10.1 is", "le 1 de 3.10.1 vaut"},
    {"thick end", "gros bout"},
    {"to (e)", "à (e)"},
    {"under it", "dessous"},
    {"what could not be seen", "ce qui n’a pu être vu"},
    {"which plane", "quel plan"},
    {"wind", "gauchissement"},
};

} // namespace

std::span<const Entry> french_of_forms() {
    return entries;
}

} // namespace roundlay
