// Of what an export can be told.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"AP214, which shops ask for", "AP214, que les ateliers demandent"},
    {"AP242, ISO 10303-242 edition 2", "AP242, ISO 10303-242 édition 2"},
    {"Bed", "Plateau"},
    {"Board", "Panneau"},
    {"Clearance", "Jeu"},
    {"Colours", "Couleurs"},
    {"Depth of a pass", "Profondeur de passe"},
    {"Depth of marks", "Profondeur des traits"},
    {"Feed", "Avance"},
    {"Linked", "Lié"},
    {"Margin", "Marge"},
    {"Nozzle", "Buse"},
    {"Paper of the sheets", "Papier des feuilles"},
    {"Plunge feed", "Avance de plongée"},
    {"Safe height", "Hauteur de sécurité"},
    {"Schema", "Schéma"},
    {"Size of a tab", "Taille d’une attache"},
    {"Size of the picture", "Taille de l’image"},
    {"Spacing", "Écart"},
    {"Spindle", "Broche"},
    {"Tabs", "Attaches"},
    {"Through", "Au-delà"},
    {"Unit", "Unité"},
    {"View", "Vue"},
    {"With stock", "Avec le brut"},
    {"a comma in a number can be read in two ways; expected a decimal point and no thousands mark",
     "une virgule dans un nombre peut se lire de deux façons ; il faut un point décimal et pas de séparateur "
     "de milliers"},
    {"as the tool asks", "selon l’outil"},
    {"as the units", "selon les unités"},
    {"between two printed faces that meet", "entre deux faces imprimées qui se touchent"},
    {"between two templates", "entre deux gabarits"},
    {"bridges that hold each template", "ponts qui tiennent chaque gabarit"},
    {"by wall", "par mur"},
    {"by wood: new, replacement, patched, kept", "par bois : neuf, remplacement, réparé, gardé"},
    {"each piece's tag is pressed into its underside, where the nozzle can make its letters; places.csv says "
     "where not, and why",
     "le repère de chaque pièce est marqué en creux dessous, là où la buse peut en faire les lettres ; "
     "places.csv dit où non, et pourquoi"},
    {"edition of the format", "édition du format"},
    {"expected %1, each %2 to %3", "il faut %1, chacune de %2 à %3"},
    {"expected a length of %1 to %2", "il faut une longueur de %1 à %2"},
    {"expected a number from %1 to %2", "il faut un nombre de %1 à %2"},
    {"expected a scale such as 1:10, 1:%1 to 1:%2", "il faut une échelle comme 1:10, de 1:%1 à 1:%2"},
    {"expected a whole number from %1 to %2", "il faut un nombre entier de %1 à %2"},
    {"expected one of %1", "il faut l’un de %1"},
    {"expected yes or no", "il faut yes ou no"},
    {"from the board's border to a template", "du bord du panneau à un gabarit"},
    {"from where the shell is seen", "d’où la coque est vue"},
    {"holes for dowels", "trous pour des tourillons"},
    {"how deep shoulders and level lines are marked, by grooves as wide as the tool whose middle is the "
     "line; templates that are another's mirror image then are cut for themselves",
     "à quelle profondeur épaulements et lignes de niveau sont marqués, par des rainures larges comme "
     "l’outil dont le milieu est la ligne ; les gabarits symétriques d’un autre sont alors découpés à part"},
    {"how far below the board it cuts, into what that lies on",
     "de combien il coupe sous le panneau, dans ce qui le porte"},
    {"how far it goes along in a minute", "le chemin qu’il fait en une minute"},
    {"how far it goes down in a minute", "ce qu’il descend en une minute"},
    {"how far over the board it moves from place to place, over all clamps",
     "à quelle hauteur au-dessus du panneau il se déplace, au-dessus de toutes les brides"},
    {"how wide and high a bridge is", "largeur et hauteur d’un pont"},
    {"in each piece's file a second solid: the stick that it is cut from",
     "dans le fichier de chaque pièce un second solide : le brut d’où elle est taillée"},
    {"in pixels", "en pixels"},
    {"in which its lengths are", "dans laquelle sont ses longueurs"},
    {"inches", "pouces"},
    {"its turns a minute", "ses tours par minute"},
    {"length x width x thickness", "longueur x largeur x épaisseur"},
    {"millimetres", "millimètres"},
    {"no holes", "pas de trous"},
    {"no marks", "pas de traits"},
    {"of drawings and cut sheets; tags, forms, templates and story poles come on A4 or Letter, whichever "
     "goes with it",
     "des plans et des fiches de taille ; étiquettes, formulaires, gabarits et piges sont en A4 ou Letter, "
     "selon ce qui va avec"},
    {"of the model", "de la maquette"},
    {"of the printer: what is thinner is refused", "de l’imprimante : ce qui est plus mince est refusé"},
    {"of the printer: what it can print on", "de l’imprimante : ce sur quoi elle imprime"},
    {"printed too", "imprimées aussi"},
    {"shell.step refers to the files of its pieces and is small: keep them together",
     "shell.step renvoie aux fichiers de ses pièces et reste petit : gardez-les ensemble"},
    {"the diameter of its straight cutter", "le diamètre de sa fraise droite"},
    {"the most that one pass takes off", "le plus qu’une passe enlève"},
    {"to be stated", "à indiquer"},
    {"what becomes of them in the model", "ce qu’elles deviennent dans la maquette"},
    {"what is cut, its length along X", "ce qui est découpé, sa longueur le long de X"},
    {"what tells solids apart", "ce qui distingue les solides"},
    {"width x depth", "largeur x profondeur"},
    {"width x height", "largeur x hauteur"},
    {"width x height in pixels", "largeur x hauteur en pixels"},
};

} // namespace

std::span<const Entry> french_of_options() {
    return entries;
}

} // namespace roundlay
