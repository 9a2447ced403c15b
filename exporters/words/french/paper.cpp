// Of the frame of sheets, of templates, tags and the packing list.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 above", "%1 de dessus"},
    {"%1 does not fit this paper at any scale that is drawn to.",
     "%1 n’entre sur ce papier à aucune échelle de dessin."},
    {"%1 end", "%1 bout"},
    {"%1 ft³", "%1 pi³"},
    {"%1 inside", "%1 intérieur"},
    {"%1 logs, the last raised first", "%1 pièces, la dernière levée en premier"},
    {"%1 m³", "%1 m³"},
    {"%1 outside", "%1 extérieur"},
    {"%1 piece: %2", "%1 pièce : %2"},
    {"%1 pieces: %2", "%1 pièces : %2"},
    {"%1 to %2", "%1 à %2"},
    {"%1 underneath", "%1 de dessous"},
    {"%1, continued", "%1, suite"},
    {", %1 of %2", ", %1 de %2"},
    {"100 mm", "100 mm"},
    {"4 in", "4 po"},
    {"Approved by", "Approuvé par"},
    {"Basis", "Base"},
    {"Blank", "Ébauche"},
    {"Caution", "Prudence"},
    {"Created by", "Établi par"},
    {"Date of issue", "Date d’émission"},
    {"Dimensions in feet, inches and %1ths.", "Cotes en pieds, pouces et %1ᵉˢ."},
    {"Dimensions in millimetres.", "Cotes en millimètres."},
    {"Document type", "Type de document"},
    {"Floor %1, %2", "Plancher %1, %2"},
    {"In all", "En tout"},
    {"Lang.", "Langue"},
    {"Load", "Charge"},
    {"Load in this order: the last to be raised goes on first",
     "Charger dans cet ordre : la dernière à lever d’abord"},
    {"Loaded", "Chargée"},
    {"No.", "N°"},
    {"Not drawn", "Pas dessiné"},
    {"Notes", "Notes"},
    {"Notes on this sheet", "Notes sur cette feuille"},
    {"Number", "Numéro"},
    {"Owner", "Propriétaire"},
    {"Packing list", "Liste de chargement"},
    {"Pieces", "Pièces"},
    {"Print at 100 %", "Imprimer à 100 %"},
    {"Raise", "Levage"},
    {"Revision", "Révision"},
    {"Scale", "Échelle"},
    {"Sheet", "Feuille"},
    {"Size", "Format"},
    {"Tags", "Repères"},
    {"Tags from %1", "Repères à partir de %1"},
    {"Templates", "Gabarits"},
    {"Templates at full size: which pieces they are for", "Gabarits en vraie grandeur : pour quelles pièces"},
    {"Title", "Titre"},
    {"Volume", "Volume"},
    {"Wall %1, round %2", "Mur %1, rang %2"},
    {"Weight", "Poids"},
    {"Weight from", "Poids de"},
    {"Where", "Où"},
    {"and more, see the list of templates", "et d’autres, voir la liste des gabarits"},
    {"as shown", "au dessin"},
    {"full size", "vraie grandeur"},
    {"joist's end from above", "bout de solive vu de dessus"},
    {"list", "liste"},
    {"none", "néant"},
    {"not known", "inconnu"},
    {"pocket from above", "mortaise vue de dessus"},
    {"row %1 of %2, column %3 of %4", "rangée %1 de %2, colonne %3 de %4"},
    {"to", "à"},
    {"within the log", "dans la pièce"},
};

} // namespace

std::span<const Entry> french_of_paper() {
    return entries;
}

} // namespace roundlay
