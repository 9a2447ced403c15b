#include "kernel/survey/survey_sheet.h"

#include "kernel/document/key.h"
#include "kernel/measure/character.h"
#include "kernel/survey/survey_parts.h"
#include "kernel/survey/survey_words.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr std::size_t rows_to_fill = 500; ///< under those that are there, with words to choose from

std::vector<std::string> part_words(bool in_french) {
    std::vector<std::string> words;
    for (const SurveyPart *part : all_survey_parts())
        words.push_back(in_french ? part->french : part->name);
    return words;
}

/// What a cell of such a row offers; nothing where it takes any text.
std::vector<std::string> offered(const SurveyPart &part, const std::string &column, bool in_french) {
    const format::Key *key = survey_key(part, column);
    const auto *one_of = key ? std::get_if<format::OneOf>(&key->kind) : nullptr;
    std::vector<std::string> words;
    if (one_of)
        for (const std::string &word : one_of->words)
            words.push_back(survey_word(word, in_french));
    return words;
}

const SurveyPart *part_called(const std::string &name) {
    for (const SurveyPart *part : all_survey_parts())
        if (name == part->name || name == part->french) return part;
    return nullptr;
}

/// Rows of one kind that lie together share their list.
void add_choices(const SurveyTable &table, std::size_t column, std::vector<SheetChoice> &choices) {
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const SurveyPart *part = part_called(table.rows[row].front());
        std::vector<std::string> words =
            part ? offered(*part, table.keys[column], table.in_french) : std::vector<std::string>{};
        if (words.empty()) continue;
        const bool goes_on = !choices.empty() && choices.back().column == column &&
                             choices.back().last_row + 1 == row && choices.back().words == words;
        if (goes_on)
            choices.back().last_row = row;
        else
            choices.push_back({column, row, row, std::move(words)});
    }
}

std::size_t letters_of(const std::string &text) {
    std::size_t count = 0;
    for (const char c : text)
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    return count;
}

} // namespace

double sheet_width(const std::string &heading, const std::vector<std::vector<std::string>> &rows,
                   std::size_t column) {
    constexpr std::size_t least = 7, most = 40, air = 2;
    std::size_t width = std::max(least, letters_of(heading));
    for (const auto &row : rows)
        if (column < row.size()) width = std::max(width, letters_of(row[column]));
    return static_cast<double>(std::min(width, most) + air);
}

SheetTable survey_sheet(const SurveyTable &table) {
    constexpr std::size_t names = 2; // row and tag
    SheetTable sheet;
    sheet.name = table.in_french ? "relevé" : "survey";
    sheet.rows = table.rows;
    sheet.stays = names;
    sheet.room = rows_to_fill;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        sheet.columns.push_back({table.columns[c], sheet_width(table.columns[c], table.rows, c)});
        if (table.keys[c] != survey_row) add_choices(table, c, sheet.choices);
    }
    sheet.choices.push_back({0, 0, table.rows.size() + rows_to_fill - 1, part_words(table.in_french)});
    return sheet;
}

std::string survey_xlsx(const SurveyTable &table, const std::string &title, std::int64_t seconds_since_1970) {
    return xlsx_of({survey_sheet(table)}, title, seconds_since_1970);
}

} // namespace roundlay
