#include "kernel/survey/survey_parts.h"

#include "kernel/survey/survey_words.h"

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
    {"timber", "bois_de_plancher"},
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
    {"corner", "angle"},
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
    {"diagonal", "diagonale"},
    {"offset", "décalage"},
    {"where", "où"},
    {"read_from", "lu_depuis"},
    {"walls", "murs"},
    {"lean_first", "faux_aplomb_1"},
    {"lean_second", "faux_aplomb_2"},
    {"lean_over", "faux_aplomb_sur"},
    {"side", "côté"},
    {"opening", "ouverture"},
    {"near_at_sill", "jambage_proche_appui"},
    {"near_at_head", "jambage_proche_linteau"},
    {"far_at_sill", "jambage_loin_appui"},
    {"far_at_head", "jambage_loin_linteau"},
    {"sill", "appui"},
    {"head", "linteau"},
    {"record", "relevé"},
    {"exactness", "exactitude"},
    {"not_seen", "non_vu"},
    {"new_work", "bois_neuf"},
    {"denominator", "dénominateur"},
    {"two_fields", "deux_nombres"},
    {"numbers_in", "nombres_en"},
};

/// What columns are called as well, or were once: read, never written.
constexpr Pair other_french_names[] = {
    {"corner", "coin"}, {"gap", "jeu"}, {"gap_below", "jeu_dessous"}, {"gap_above", "jeu_dessus"}};

const char *french_of(const std::string &name) {
    for (const auto &[english, french] : french_names)
        if (name == english) return french;
    throw std::logic_error("a column of surveys has no French name: " + name);
}

SurveyColumn column_of(const std::string &name) {
    SurveyColumn column{name, french_of(name), {}};
    for (const auto &[english, french] : other_french_names)
        if (name == english) column.also.emplace_back(french);
    return column;
}

const format::Section &described(const std::string &name) {
    for (const format::Section &section : format::sections())
        if (section.table->name == name) return section;
    throw std::logic_error("no table " + name + " is described");
}

std::vector<SurveyPart> all_parts() {
    const format::Section &found = described("found");
    std::vector<SurveyPart> parts{{"log", french_of("log"), &found}};
    for (const format::Section &list : found.table->lists)
        parts.push_back({list.table->key(), french_of(list.table->key()), &list});
    return parts;
}

std::vector<SurveyPart> parts_of_house() {
    constexpr Pair known_by[] = {{"sheet", "name"},  {"level", "name"}, {"wall", "wall"},
                                 {"corner", "name"}, {"diagonal", ""},  {"opening", "name"}};
    std::vector<SurveyPart> parts;
    for (const format::Section &list : described("record").table->lists)
        for (const auto &[name, by] : known_by)
            if (list.table->key() == name) parts.push_back({name, french_of(name), &list, by, true});
    return parts;
}

void add_columns(std::vector<SurveyColumn> &columns, const SurveyPart &part) {
    for (const format::Item &item : part.section->table->items) {
        const std::string name = std::get<format::Key>(item).name;
        if (survey_key(part, name) && std::ranges::find(columns, name, &SurveyColumn::name) == columns.end())
            columns.push_back(column_of(name));
    }
}

std::vector<SurveyColumn> all_columns() {
    std::vector<SurveyColumn> columns{column_of(survey_row), column_of(survey_tag)};
    for (const SurveyPart &part : survey_parts())
        add_columns(columns, part);
    for (const SurveyPart &part : house_parts())
        add_columns(columns, part);
    add_columns(columns, survey_head());
    return columns;
}

} // namespace

std::span<const SurveyPart> survey_parts() {
    static const std::vector<SurveyPart> parts = all_parts();
    return parts;
}

std::span<const SurveyPart> house_parts() {
    static const std::vector<SurveyPart> parts = parts_of_house();
    return parts;
}

const SurveyPart &survey_head() {
    static const SurveyPart head{"record", french_of("record"), &described("record"), "", true};
    return head;
}

std::vector<const SurveyPart *> all_survey_parts() {
    std::vector<const SurveyPart *> all{&survey_head()};
    for (const auto parts : {survey_parts(), house_parts()})
        for (const SurveyPart &part : parts)
            all.push_back(&part);
    return all;
}

std::string known_as(const SurveyPart &part, const void *owner) {
    const auto text = [&](const std::string &name) {
        for (const format::Item &item : part.section->table->items)
            if (const auto &key = std::get<format::Key>(item); key.name == name)
                if (const auto value = key.value(owner)) return std::get<std::string>(*value);
        return std::string();
    };
    if (!part.by.empty()) return text(part.by);
    std::string from = text("from"), to = text("to");
    if (to < from) std::swap(from, to);
    return from + " - " + to;
}

const void *one_known_as(const SurveyPart &part, const Record &record, const std::string &name) {
    for (std::size_t i = 0; i < part.section->size(&record); ++i)
        if (const void *owner = part.section->at(&record, i); known_as(part, owner) == name) return owner;
    return nullptr;
}

std::span<const SurveyColumn> survey_columns() {
    static const std::vector<SurveyColumn> columns = all_columns();
    return columns;
}

std::string survey_column_name(const std::string &key, bool in_french) {
    for (const SurveyColumn &column : survey_columns())
        if (column.name == key) return in_french ? column.french : column.name;
    return key;
}

const format::Key *survey_key(const SurveyPart &part, const std::string &column) {
    if (part.of_house && column == part.by) return nullptr; // it stands in the column `tag`
    for (const format::Item &item : part.section->table->items)
        if (const format::Key &key = std::get<format::Key>(item); key.name == column) return &key;
    return nullptr;
}

} // namespace roundlay
