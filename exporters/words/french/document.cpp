// Of the comments that a new document is written with.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"A corner of its own; what it leaves out is as in [notch].",
     "Un angle à part ; ce qu’il omet est comme dans [notch]."},
    {"A shell of hewn logs. Lengths stand in quotes with their unit, in either system:",
     "Une coque de pièces équarries. Les longueurs sont entre guillemets avec leur unité, de l’un ou l’autre "
     "système :"},
    {"Butt and tip of every log; butt = \"left\" or \"right\", seen from outside. Left out: as the wall.",
     "Pied et tête de chaque pièce ; butt = \"left\" (gauche) ou \"right\" (droite), vu de l’extérieur. Sans "
     "cela : comme le mur."},
    {"Joists lie from one wall to the one across the room.", "Les solives vont d’un mur à celui d’en face."},
    {"Openings: from_left runs from the wall's left corner seen from outside, sill from the foundation.",
     "Les ouvertures : from_left depuis l’angle gauche du mur vu de l’extérieur, sill depuis la fondation."},
    {"Partitions: from one wall to another; from_left runs along the first one's outside.",
     "Les cloisons : d’un mur à un autre ; from_left se compte le long de l’extérieur du premier."},
    {"Slopes:", "Pentes :"},
    {"The house as it was found. Numbers stay as they were noted.",
     "La maison telle qu’elle a été trouvée. Les nombres restent comme ils ont été notés."},
    {"The walls: a walk once round the outside faces, counter-clockwise seen from above.",
     "Les murs : un tour le long des faces extérieures, dans le sens inverse des aiguilles d’une montre vu "
     "du dessus."},
    {"Two of count, height and pitch; the third follows.",
     "Deux de count, height et pitch ; le troisième s’ensuit."},
    {"What is done already, by the tags of the pieces.", "Ce qui est déjà fait, par les repères des pièces."},
    {"along the joists", "le long des solives"},
    {"along the wall", "le long du mur"},
    {"behind the crossing wall's face", "derrière la face du mur croisé"},
    {"between the logs of one wall", "entre les pièces d’un mur"},
    {"between two bores in one log, at least", "entre deux perçages d’une pièce, au moins"},
    {"counted from the left", "compté depuis la gauche"},
    {"each cheek of a tailed end", "de chaque joue d’un bout en queue"},
    {"falls outward", "penche vers l’extérieur"},
    {"fastening places are never further apart", "les attaches ne sont jamais plus distantes"},
    {"fastening places of every log", "attaches de chaque pièce"},
    {"foundation to the top of the last round", "de la fondation au-dessus du dernier rang"},
    {"from a bore to a cut end, a jamb or a shoulder, at least",
     "d’un perçage à un bout, un jambage ou un épaulement, au moins"},
    {"from the room's left side to the first joist's middle",
     "du côté gauche de la pièce au milieu de la première solive"},
    {"how lengths are shown: \"metric\" or \"imperial\"",
     "comment les longueurs s’affichent : \"metric\" ou \"imperial\""},
    {"in the wall", "dans le mur"},
    {"inside face to the beam's middle", "de la face intérieure au milieu de la poutre"},
    {"into the lower log, as a part of its height", "dans la pièce du dessous, en part de sa hauteur"},
    {"left standing until the logs are fitted", "laissé jusqu’à l’ajustage des pièces"},
    {"length left out: this wall closes the plan", "longueur omise : ce mur ferme le plan"},
    {"moisture = 19 # percent of ovendry mass; left out means green",
     "moisture = 19 # pour cent de la masse anhydre ; sans cela, le bois est vert"},
    {"no tail thinner than this", "aucune queue plus mince"},
    {"of a joist", "d’une solive"},
    {"of each log's hole to the right of the one below",
     "du trou de chaque pièce à droite de celui du dessous"},
    {"of every wall that does not state its own", "de chaque mur qui n’indique pas la sienne"},
    {"of the log over an opening, at both sides", "de la pièce au-dessus d’une ouverture, des deux côtés"},
    {"on centre", "d’axe en axe"},
    {"one round, its gap included", "un rang, son joint compris"},
    {"out of the line between its ends", "hors de la ligne entre ses bouts"},
    {"outward along the crossing log", "vers l’extérieur le long de la pièce croisée"},
    {"outward along the log", "vers l’extérieur le long de la pièce"},
    {"over each frame", "au-dessus de chaque cadre"},
    {"over the lowest foundation", "au-dessus de la fondation la plus basse"},
    {"past the crossing wall; 0 is flush", "au-delà du mur croisé ; 0 : à fleur"},
    {"percent of ovendry mass", "pour cent de la masse anhydre"},
    {"saddles clear the lower log by this", "les encoches passent la pièce du dessous d’autant"},
    {"side of square pegs", "côté des chevilles carrées"},
    {"species = \"eastern hemlock\" # for weights and spans; left out, that is taken and said to be",
     "species = \"eastern hemlock\" # pour les poids et les portées ; sans cela, c’est elle qui est prise, "
     "et dite"},
    {"the groove in each jamb", "la rainure de chaque jambage"},
    {"the lower hole nearer to the log's end by this", "le trou du dessous plus près du bout d’autant"},
    {"this wall starts with a full log", "ce mur commence par une pièce entière"},
    {"tops of the joists over the foundation", "dessus des solives au-dessus de la fondation"},
    {"under its left end", "sous son bout gauche"},
    {"under its right end", "sous son bout droit"},
    {"version of the format", "version du format"},
    {"where no settle_space is stated", "là où aucun settle_space n’est indiqué"},
};

} // namespace

std::span<const Entry> french_of_document() {
    return entries;
}

} // namespace roundlay
