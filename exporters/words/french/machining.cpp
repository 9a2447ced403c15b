// Of lists of operations for machines.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"A proposal worked out from the model: nothing of it has been proved on wood or on a machine. Set-ups, "
     "clamping, tools, tolerances and the order of work are for the shop to decide, by its own practice and "
     "by the rules of safety of its machines.",
     "Proposition tirée du modèle : rien n’en a été éprouvé sur du bois ni sur une machine. Prises de pièce, "
     "serrage, outils, tolérances et ordre du travail sont à décider par l’atelier, selon sa pratique et "
     "selon les règles de sécurité de ses machines."},
    {"JSON Schema of the operations", "schéma JSON des opérations"},
    {"no straight tool reaches it", "aucun outil droit ne l’atteint"},
    {"operations", "opérations"},
    {"operations on all pieces, a row each; a proposal, see its caution",
     "opérations sur toutes les pièces, une ligne chacune ; une proposition, voir sa mise en garde"},
    {"operations on one piece, for no machine in particular; a proposal, see its caution",
     "opérations sur une pièce, pour aucune machine en particulier ; une proposition, voir sa mise en garde"},
    {"operations.csv and operations/TAG.json for each distinct piece: what is cut, from which side, with "
     "which reach, for no machine in particular",
     "operations.csv et operations/TAG.json par pièce différente : ce qui est taillé, de quel côté, avec "
     "quelle portée, pour aucune machine en particulier"},
    {"plane cut", "coupe plane"},
    {"pocket", "mortaise"},
    {"round groove along the log", "gorge ronde le long de la pièce"},
    {"round saddle across the log", "selle ronde en travers de la pièce"},
    {"slot", "entaille"},
};

} // namespace

std::span<const Entry> french_of_machining() {
    return entries;
}

} // namespace roundlay
