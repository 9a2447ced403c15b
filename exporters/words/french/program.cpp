// Of the command line.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 error", "%1 erreur"},
    {"%1 errors", "%1 erreurs"},
    {"%1 note", "%1 note"},
    {"%1 notes", "%1 notes"},
    {"%1 peg", "%1 cheville"},
    {"%1 pegs", "%1 chevilles"},
    {"%1 piece (%2 distinct)", "%1 pièce (%2 différente)"},
    {"%1 pieces (%2 distinct)", "%1 pièces (%2 différentes)"},
    {"%1 wall", "%1 mur"},
    {"%1 walls", "%1 murs"},
    {"%1 warning", "%1 avertissement"},
    {"%1 warnings", "%1 avertissements"},
    {"... (--json lists all)", "... (--json les donne tous)"},
    {"; nothing was made", " ; rien n’a été fait"},
    {"Heights are over the foundation. A sill or a head of an opening anywhere between one log's top and the "
     "under face of the log over it leaves no sliver of wood.",
     "Les hauteurs sont depuis la fondation. Une allège ou un haut d’ouverture entre le haut d’une pièce et "
     "le dessous de celle qui est au-dessus ne laisse pas de mince bande de bois."},
    {"Move the sill or the top of such an opening, or lay other logs there, before these are cut.",
     "Déplacez l’allège ou le haut d’une telle ouverture, ou posez-y d’autres pièces, avant que celles-ci "
     "soient taillées."},
    {"Pegs: %1.", "Chevilles : %1."},
    {"Settle space of %1: %2.", "Espace de tassement de %1 : %2."},
    {"Weight of all pieces: %1", "Masse de toutes les pièces : %1"},
    {"Weights: %1", "Poids : %1"},
    {"With them the check finds what it does not find without:",
     "Avec elles, la vérification trouve ce qu’elle ne trouve pas sans elles :"},
    {"and %1 more like it: %2", "et %1 autres pareils : %2"},
};

} // namespace

std::span<const Entry> french_of_program() {
    return entries;
}

} // namespace roundlay
