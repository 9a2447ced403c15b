#include "kernel/survey/survey_parts.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace roundlay {

namespace {

using Pair = std::pair<const char *, const char *>;

/// As they stand in the lists and sheets in French.
constexpr Pair french_names[] = {
    {"tag", "repère"},
    {"row", "ligne"},
    {"log", "bille"},
    {"end", "bout"},
    {"station", "point"},
    {"zone", "zone"},
    {"test", "essai"},
    {"moisture", "humidité"},
    {"peg", "cheville"},
    {"later_cut", "coupe_ultérieure"},
    {"wall", "mur"},
    {"round", "rang"},
    {"piece", "pièce"},
    {"scarfed_to", "enté_à"},
    {"cut_from", "coupé_de"},
    {"replaces", "remplace"},
    {"sheet", "feuille"},
    {"by", "par"},
    {"on", "date"},
    {"zero", "zéro"},
    {"length", "longueur"},
    {"between_shoulders", "entre_épaulements"},
    {"butt", "gros_bout"},
    {"bow", "cintrage"},
    {"bow_to", "cintrage_vers"},
    {"wind", "gauchissement"},
    {"species", "essence"},
    {"finish_outside", "façon_dehors"},
    {"finish_inside", "façon_dedans"},
    {"finish_top", "façon_dessus"},
    {"finish_under", "façon_dessous"},
    {"marks", "marques"},
    {"photographs", "photographies"},
    {"condition", "état"},
    {"cause", "cause"},
    {"urgency", "urgence"},
    {"decision", "décision"},
    {"note", "note"},
    {"corner", "coin"},
    {"height", "hauteur"},
    {"width", "largeur"},
    {"shoulder_outside", "épaulement_dehors"},
    {"shoulder_inside", "épaulement_dedans"},
    {"end_outside", "about_dehors"},
    {"end_inside", "about_dedans"},
    {"overhang", "débord"},
    {"gap", "jour"},
    {"level", "niveau"},
    {"plane", "plan"},
    {"joint", "assemblage"},
    {"at", "place"},
    {"gap_below", "jour_dessous"},
    {"gap_above", "jour_dessus"},
    {"what", "quoi"},
    {"from", "depuis"},
    {"to", "jusque"},
    {"faces", "faces"},
    {"depth", "profondeur"},
    {"tool", "outil"},
    {"face", "face"},
    {"showed", "constat"},
    {"percent", "pour_cent"},
    {"season", "saison"},
    {"probe", "sonde"},
    {"state", "sort"},
    {"diameter", "diamètre"},
    {"why", "pourquoi"},
};

const char *french_of(const std::string &name) {
    for (const auto &[english, french] : french_names)
        if (name == english) return french;
    throw std::logic_error("a column of surveys has no French name: " + name);
}

const format::Section &found() {
    for (const format::Section &section : format::sections())
        if (section.table->name == "found") return section;
    throw std::logic_error("no table found is described");
}

std::vector<SurveyPart> all_parts() {
    std::vector<SurveyPart> parts{{"log", french_of("log"), &found()}};
    for (const format::Section &list : found().table->lists)
        parts.push_back({list.table->key(), french_of(list.table->key()), &list});
    return parts;
}

std::vector<SurveyColumn> all_columns() {
    std::vector<SurveyColumn> columns{{survey_row, french_of(survey_row)},
                                      {survey_tag, french_of(survey_tag)}};
    for (const SurveyPart &part : survey_parts())
        for (const format::Item &item : part.section->table->items) {
            const std::string name = std::get<format::Key>(item).name;
            if (std::ranges::find(columns, name, &SurveyColumn::name) == columns.end())
                columns.push_back({name, french_of(name)});
        }
    return columns;
}

} // namespace

std::span<const SurveyPart> survey_parts() {
    static const std::vector<SurveyPart> parts = all_parts();
    return parts;
}

std::span<const SurveyColumn> survey_columns() {
    static const std::vector<SurveyColumn> columns = all_columns();
    return columns;
}

const format::Key *survey_key(const SurveyPart &part, const std::string &column) {
    for (const format::Item &item : part.section->table->items)
        if (const format::Key &key = std::get<format::Key>(item); key.name == column) return &key;
    return nullptr;
}

} // namespace roundlay
