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
    return text + "\nroundlay format TABLE tells the keys of one of them.\n";
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
