#include "modeler/command_line/format_words.h"

#include "kernel/document/reference.h"

#include <nlohmann/json.hpp>

#include <sstream>

namespace roundlay {

using namespace format;

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t columns = 78;

/// Broken between words behind a margin; the first line goes on where `lead` ends.
std::string wrapped(const std::string &lead, std::size_t margin, const std::string &paragraph) {
    std::string text, line = lead.size() < margin ? lead + std::string(margin - lead.size(), ' ') : lead;
    bool first = true;
    std::istringstream words(paragraph);
    for (std::string word; words >> word; first = false) {
        if (!first && line.size() + 1 + word.size() > columns) {
            text += line + "\n";
            line = std::string(margin, ' ') + word;
        } else {
            line += (first ? "" : " ") + word;
        }
    }
    return text + line + "\n";
}

/// How the kinds of values are written that have a spelling of their own.
constexpr std::pair<const char *, const char *> values[] = {
    {"a length",
     "in quotes, with its unit: \"8 1/2 in\", \"7 ft 6 in\", \"230 mm\", \"2.4 m\"; 0 needs none"},
    {"a length as noted",
     "in quotes, as it stands on the field sheet: \"3.10.1\" where the record states its denominator, or "
     "with "
     "its unit; more can be said of it: { note = \"3.10.1\", is = \"proposed\", by = \"R. Hale\", on = "
     "\"3 May\" }, where is takes \"measured\", \"proposed\" or \"contradicted\""},
    {"a slope", "in quotes, as a rise on a run or in degrees: \"1:8\", \"1 in 8\", \"7 deg\""},
    {"a direction",
     "in quotes, a compass word or degrees from one to another: \"east\", \"north-west\", \"30 deg "
     "north of east\"; east is to the right on the plan, north is up"},
    {"a load",
     "in quotes with its unit, \"40 psf\" or \"1.9 kPa\"; a number without quotes, up to 10, is in kPa"},
    {"a count, a part", "a number without quotes: 11, 0.5"},
    {"yes or no", "true or false, without quotes"},
    {"a name, a word", "in quotes: \"front door\", \"full dovetail\""}};

/// Backquotes are for Markdown.
std::string plain(std::string text) {
    std::erase(text, '`');
    return text;
}

std::string names_in(const ReferenceRow &row) {
    if (!row.shared.empty()) return "all keys of " + row.shared;
    std::string names;
    for (const std::string &key : row.keys)
        names += (names.empty() ? "" : ", ") + key;
    return names;
}

std::string words_of_row(const ReferenceRow &row) {
    const std::string margin(4, ' ');
    std::string text = "\n" + names_in(row) + "\n";
    if (!row.what.empty()) text += wrapped("", margin.size(), plain(row.what));
    if (!row.takes.empty()) text += wrapped(margin + "takes:", margin.size() + 10, plain(row.takes));
    return text + (row.needed ? margin + "must be stated\n"
                              : wrapped(margin + "left out:", margin.size() + 10, plain(row.left_out)));
}

Json json_of_head(const Section &section) {
    return {{"table", section.table->name}, {"header", header(section)}, {"summary", section.table->summary}};
}

Json json_of_row(const ReferenceRow &row) {
    if (!row.shared.empty()) return {{"all_keys_of", row.shared}, {"left_out", plain(row.left_out)}};
    return {{"keys", row.keys},
            {"takes", plain(row.takes)},
            {"what", plain(row.what)},
            {"needed", row.needed},
            {"left_out", row.needed ? Json() : Json(plain(row.left_out))}};
}

} // namespace

std::string words_of_tables() {
    std::string text;
    for (const Section *section : all_sections())
        text += wrapped(header(*section), 20, section->table->summary);
    text += "\nroundlay format TABLE tells the keys of one of them. Their values:\n\n";
    for (const auto &[kind, how] : values)
        text += wrapped(kind, 20, how);
    return text;
}

std::string words_of_table(const Section &section) {
    std::string text = header(section) + "\n" + wrapped("", 0, section.table->summary);
    for (const ReferenceRow &row : reference_rows(section))
        text += words_of_row(row);
    return text;
}

std::string json_of_tables() {
    Json tables = Json::array();
    for (const Section *section : all_sections())
        tables.push_back(json_of_head(*section));
    return tables.dump(2) + "\n";
}

std::string json_of_table(const Section &section) {
    Json json = json_of_head(section);
    for (const ReferenceRow &row : reference_rows(section))
        json["rows"].push_back(json_of_row(row));
    return json.dump(2) + "\n";
}

} // namespace roundlay
