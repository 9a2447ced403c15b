// Of what an export makes, as it is offered.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 at full size as triangles, millimetres, in its own frame",
     "%1 en vraie grandeur en triangles, millimètres, dans son propre repère"},
    {"Bodies have plane faces alone. Cuts that are plane are exact, a bore is a prism of %1 sides and of its "
     "volume, round surfaces are flats; BodyWithin says how far off those lie. NetVolume is of the wood "
     "itself.",
     "Les corps n’ont que des faces planes. Les coupes planes sont exactes, un perçage est un prisme de %1 "
     "côtés et de même volume, les surfaces rondes sont à facettes ; BodyWithin dit de combien elles s’en "
     "écartent. NetVolume est celui du bois lui-même."},
    {"IFC", "IFC"},
    {"STEP", "STEP"},
    {"STL", "STL"},
    {"Walls have no body of their own, and the pieces are cut out where openings are: an opening is told as "
     "a box, to be cut out of nothing.",
     "Les murs n’ont pas de corps propre, et les pièces sont déjà coupées aux ouvertures : une ouverture est "
     "donnée comme une boîte, à ne retrancher de rien."},
    {"a plate to be printed, each part by its tag", "un plateau à imprimer, chaque partie par son repère"},
    {"a plate to be printed, millimetres", "un plateau à imprimer, millimètres"},
    {"a tag with a QR code for every log that was chosen", "un repère à code QR par pièce choisie"},
    {"all lists, a sheet each, with filters and sums by formulas",
     "toutes les listes, une feuille chacune, avec filtres et sommes par formules"},
    {"bench", "établi"},
    {"bench-set.pdf, the same in few sheets: each tail once, large, and pieces that differ only in numbers "
     "as rows of one drawing",
     "bench-set.pdf, la même chose en peu de feuilles : chaque queue une fois, en grand, et les pièces qui "
     "ne diffèrent que par des nombres en lignes d’un seul dessin"},
    {"book", "livre"},
    {"book.pdf, cover, index, legend and all sheets in one",
     "book.pdf, couverture, table, légende et toutes les fiches en un"},
    {"cut list, list by tag, pegs, lengths to order and totals as CSV, and all of them as lists.xlsx",
     "liste de débit, liste par repère, chevilles, longueurs à commander et totaux en CSV, et toutes en "
     "lists.xlsx"},
    {"cut-sheets.pdf, one cut sheet for each distinct piece",
     "cut-sheets.pdf, une fiche de taille par pièce différente"},
    {"drawings", "dessins"},
    {"drawings.pdf, foundation, walls, sections and rounds, and story-poles.pdf at full size",
     "drawings.pdf, fondation, murs, coupes et rangs, et story-poles.pdf en vraie grandeur"},
    {"each tail once, and pieces that are alike as rows",
     "chaque queue une fois, et les pièces semblables en lignes"},
    {"forms", "fiches de relevé"},
    {"forms.pdf, to be filled in at a house that stands: every wall and corner, log by log",
     "forms.pdf, à remplir à une maison debout : chaque mur et angle, pièce par pièce"},
    {"its tag has letters that are not printed", "son repère a des lettres qui ne s’impriment pas"},
    {"log %1 is %2 long at %3 and the bed %4: %5 or smaller is needed, or a larger bed",
     "la pièce %1 est longue de %2 à %3 et le plateau de %4 : il faut %5 ou plus petit, ou un plateau plus "
     "grand"},
    {"log %1 is %2 thin at %3: less than two lines of the nozzle of %4 and the clearance; %5 or larger is "
     "needed, or a finer nozzle",
     "la pièce %1 est mince de %2 à %3 : moins que deux cordons de la buse de %4 et le jeu ; il faut %5 ou "
     "plus grand, ou une buse plus fine"},
    {"mesh", "maillage"},
    {"no level place under it takes letters that its nozzle prints",
     "pas de place plane dessous pour des lettres que sa buse imprime"},
    {"no piece of this shell is of what was chosen; nothing was written",
     "aucune pièce de cette coque ne répond à ce qui a été choisi ; rien n’a été écrit"},
    {"openings, pegs and rods, sticks to order, floors and the raise, as tables",
     "ouvertures, chevilles et tirants, bois à commander, planchers et levage, en tableaux"},
    {"operation-sheets.pdf, for each distinct piece its stock, set-ups and operations as tables on paper",
     "operation-sheets.pdf, pour chaque pièce différente son bois de départ, ses prises et ses opérations en "
     "tableaux sur papier"},
    {"peg %1, %2 thick, is %3 at %4 less the clearance: thinner than the nozzle of %5; %6 or larger is "
     "needed, a finer nozzle, or no pegs",
     "la cheville %1, épaisse de %2, est de %3 à %4 moins le jeu : plus mince que la buse de %5 ; il faut %6 "
     "ou plus grand, une buse plus fine, ou pas de chevilles"},
    {"picture", "image"},
    {"picture.png, the shell as it will stand", "picture.png, la coque telle qu’elle sera debout"},
    {"print", "impression"},
    {"print/plate-1.stl and .3mf, a model of the shell for a printer: every piece on a plate, at the scale "
     "that is stated; only where it is asked for",
     "print/plate-1.stl et .3mf, une maquette de la coque pour une imprimante : chaque pièce sur un plateau, "
     "à l’échelle indiquée ; seulement à la demande"},
    {"report", "rapport"},
    {"report.pdf on the house as it was found, for its owner and whoever looks after its heritage, with its "
     "tables as CSV and report.xlsx",
     "report.pdf sur la maison telle que trouvée, pour son propriétaire et qui veille à son patrimoine, avec "
     "ses tableaux en CSV et report.xlsx"},
    {"schedules", "nomenclatures"},
    {"schedules.pdf, openings, pegs and rods, sticks to order, floors with their screen, and the raise to be "
     "ticked off",
     "schedules.pdf, ouvertures, chevilles et tirants, bois à commander, planchers avec leur vérification "
     "sommaire, et le levage à cocher"},
    {"sheets", "fiches"},
    {"sheets of operations", "fiches d’opérations"},
    {"sheets of operations, a proposal; see the caution on each",
     "fiches d’opérations, une proposition ; voir la mise en garde de chacune"},
    {"shell.glb, the shell for phones, browsers and slides",
     "shell.glb, la coque pour téléphones, navigateurs et diapositives"},
    {"shell.ifc, the shell for an architect's program: storeys, walls, every piece with its body, openings, "
     "pegs and quantities; only where it is asked for",
     "shell.ifc, la coque pour le logiciel d’un architecte : niveaux, murs, chaque pièce avec son corps, "
     "ouvertures, chevilles et quantités ; seulement à la demande"},
    {"shell.step, the whole shell as solids, and pieces/TAG.step for each distinct piece",
     "shell.step, toute la coque en solides, et pieces/TAG.step par pièce différente"},
    {"site", "terrain"},
    {"stl/TAG.stl, each distinct piece at full size as triangles; only where it is asked for",
     "stl/REPÈRE.stl, chaque pièce différente en vraie grandeur en triangles ; seulement à la demande"},
    {"tags", "repères"},
    {"tags.pdf, a tag with a QR code for every log, packing-list.pdf, and raising.pdf to be ticked off",
     "tags.pdf, un repère à code QR par pièce, packing-list.pdf, et raising.pdf à cocher"},
    {"templates", "gabarits"},
    {"templates.pdf, every tail and notch at full size, and the same as DXF for a machine",
     "templates.pdf, chaque queue et entaille en vraie grandeur, et de même en DXF pour une machine"},
    {"the heavier end of an estimate; no lift plan: see Caution of the building",
     "le plus lourd d’une estimation, ce n’est pas un plan de levage : voir Caution du bâtiment"},
    {"the shell as a building, IFC 4, millimetres", "la coque comme bâtiment, IFC 4, millimètres"},
    {"there is no piece \"%1\": a piece is called by its tag, such as %2, by how tags begin, or by what is "
     "written on its log",
     "il n’y a pas de pièce « %1 » : une pièce se nomme par son repère, comme %2, par le début des repères, "
     "ou par ce qui est écrit dessus"},
    {"there is no piece \"%1\"; did you mean \"%2\"?",
     "il n’y a pas de pièce « %1 » ; vouliez-vous dire « %2 » ?"},
    {"walls, from the foundation up", "murs, depuis la fondation"},
    {"which log lies where on which plate", "quelle pièce est où sur quel plateau"},
};

} // namespace

std::span<const Entry> french_of_exports() {
    return entries;
}

} // namespace roundlay
