// Of the yard page.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 {peg|pegs} of %2, %3 long", "%1 {cheville|chevilles} de %2, {longue|longues} de %3"},
    {"%1, with its new wood", "%1, avec son bois neuf"},
    {"Above", "Au-dessus"},
    {"All logs", "Toutes les pièces"},
    {"Back", "Retour"},
    {"Below", "Au-dessous"},
    {"Close", "Fermer"},
    {"Cut like", "Taillée comme"},
    {"Farther", "Plus loin"},
    {"Find a log by its tag", "Trouver une pièce par son repère"},
    {"Kind", "Genre"},
    {"Left end", "Bout gauche"},
    {"Lift: %1, estimated", "À lever : %1, estimé"},
    {"Nearer", "Plus près"},
    {"Next", "Suivant"},
    {"No log is called so: %1", "Aucune pièce ne s’appelle ainsi : %1"},
    {"Notched on the left to", "Entaillée à gauche avec"},
    {"Notched on the right to", "Entaillée à droite avec"},
    {"Nothing is up yet", "Rien n’est encore levé"},
    {"Raised as number", "Levée au rang"},
    {"Right end", "Bout droit"},
    {"Scan a tag", "Lire une étiquette"},
    {"Sheet %1 of %2", "Feuille %1 sur %2"},
    {"Step %1 of %2: %3", "Étape %1 sur %2 : %3"},
    {"Take a picture of the tag", "Photographier l’étiquette"},
    {"The camera does not open; take a picture of the tag instead",
     "L’appareil photo ne s’ouvre pas ; photographiez l’étiquette"},
    {"The raise has %1 {step|steps}: go back to see them one by one",
     "Le levage a %1 {étape|étapes} : revenez en arrière pour les voir une à une"},
    {"The shell, to be turned and tapped", "La coque, à tourner et à toucher"},
    {"Then: %1", "Ensuite : %1"},
    {"There is no code to be read in this picture", "Il n’y a pas de code à lire sur cette image"},
    {"This browser shows no solid models (WebGL); the shell is drawn slowly instead",
     "Ce navigateur ne montre pas de modèles en volume (WebGL) ; la coque est dessinée, plus lentement"},
    {"This tag is of another state of %1: the log has been changed since the tag was printed, or this page "
     "is older. Look which sheet is the right one before you cut.",
     "Cette étiquette est d’un autre état de %1 : la pièce a changé depuis que l’étiquette a été imprimée, "
     "ou cette page est plus ancienne. Voyez quelle fiche est la bonne avant de tailler."},
    {"Turn with one finger, move and come nearer with two, tap a log",
     "Tournez d’un doigt, déplacez et approchez de deux, touchez une pièce"},
    {"Warning", "Avertissement"},
    {"Weights rest on", "Les poids reposent sur"},
    {"Whole shell", "Toute la coque"},
    {"page", "page"},
    {"the shell for a phone: turn it, tap a log, step through the raise",
     "la coque pour un téléphone : la tourner, toucher une pièce, suivre le levage"},
    {"yard.html, the shell for a phone in the yard: turn it, find a log, its sheet, step through the raise; "
     "needs no network",
     "yard.html, la coque pour un téléphone au chantier : la tourner, trouver une pièce, sa fiche, suivre le "
     "levage ; sans réseau"},
};

} // namespace

std::span<const Entry> french_of_page() {
    return entries;
}

} // namespace roundlay
