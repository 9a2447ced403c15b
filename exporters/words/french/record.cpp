// Of the record of a house that stands: notes, logs that were found.
#include "exporters/words/french/french.h"

namespace roundlay {

namespace {

constexpr Entry entries[] = {
    {"%1 has a third field and its sheet no denominator: state whether the sheet counts quarters, eighths or "
     "sixteenths of an inch",
     "%1 a un troisième nombre et sa feuille pas de dénominateur : indiquez si la feuille compte en quarts, "
     "en "
     "huitièmes ou en seizièmes de pouce"},
    {"%1 has two fields and can be feet.inches or decimal feet: state which of them the sheet means",
     "%1 a deux nombres et peut être des pieds.pouces ou des pieds décimaux : indiquez ce que la feuille "
     "entend"},
    {"%1 is not read as a length from its character %2 on: write feet.inches.parts such as 3.10.1, or a "
     "number with "
     "its unit such as 8 1/2 in or 215 mm",
     "%1 ne se lit pas comme une longueur à partir de son caractère %2 : écrivez pieds.pouces.parties comme "
     "3.10.1, "
     "ou un nombre avec son unité comme 8 1/2 in ou 215 mm"},
    {"running dimension %1 is %2 and lies before the one in front of it, %3: put them in order, or look at "
     "the sheet "
     "again",
     "la cote cumulée %1 est %2 et se trouve avant la précédente, %3 : mettez-les en ordre, ou revoyez la "
     "feuille"},
    {"the comma of %1 can part thousands or decimals: write the number without it, or with a point",
     "la virgule de %1 peut séparer des milliers ou des décimales : écrivez le nombre sans elle, ou avec un "
     "point"},
    {"the second field of %1 is inches and not under 12: look at the sheet again, and write feet, inches and "
     "parts",
     "le deuxième nombre de %1 est en pouces et n’est pas sous 12 : revoyez la feuille, et écrivez pieds, "
     "pouces et "
     "parties"},
    {"the third field of %1 is not under %2, which is the denominator of its sheet: look at the sheet again, "
     "or state "
     "another denominator",
     "le troisième nombre de %1 n’est pas sous %2, le dénominateur de sa feuille : revoyez la feuille, ou "
     "indiquez un "
     "autre dénominateur"},
};

} // namespace

std::span<const Entry> french_of_record() {
    return entries;
}

} // namespace roundlay
