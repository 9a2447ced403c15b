#include "exporters/sheets/schedule/list_paper.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/words/decimal_mark.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace roundlay::sheets {

namespace {

std::string cell_of(const Entry &entry, Language language) {
    if (const auto *number = std::get_if<Number>(&entry)) // as on a terminal: a person reads it
        return with_decimal_mark(number->shown.empty() ? number->digits : number->shown, language);
    if (const auto *text = std::get_if<std::string>(&entry)) return *text;
    std::string all;
    for (const std::string &one : std::get<std::vector<std::string>>(entry))
        all += (all.empty() ? "" : ", ") + one;
    return all;
}

bool holds_numbers(const roundlay::Table &list, std::size_t column) {
    for (const auto &row : list.rows)
        if (std::holds_alternative<Number>(row[column])) return true;
    return false;
}

} // namespace

Table on_paper(const roundlay::Table &list, const Words &words, const std::string &title,
               const std::vector<std::string> &keys) {
    constexpr double widest = 70;
    std::vector<std::size_t> shown;
    for (std::size_t c = 0; c < list.columns.size(); ++c)
        if (!list.columns[c].title.empty() &&
            (keys.empty() || std::ranges::count(keys, list.columns[c].key) > 0))
            shown.push_back(c);
    Table table = table_called(words, title);
    for (const std::size_t c : shown)
        table.columns.push_back(
            {list.columns[c].title, holds_numbers(list, c) ? Across::right : Across::left, widest});
    for (const auto &row : list.rows) {
        table.rows.emplace_back();
        for (const std::size_t c : shown)
            table.rows.back().push_back(cell_of(row[c], words.language()));
    }
    return table;
}

namespace {

std::size_t column_of(const roundlay::Table &list, const std::string &key) {
    const auto found = std::ranges::find(list.columns, key, &roundlay::Column::key);
    if (found == list.columns.end()) throw std::logic_error("no such column: " + key);
    return static_cast<std::size_t>(found - list.columns.begin());
}

} // namespace

std::vector<std::string> said_once(const roundlay::Table &list, const std::string &key,
                                   const std::string &names, const Words &words) {
    const std::size_t text_at = column_of(list, key), name_at = column_of(list, names);
    std::vector<std::pair<std::string, std::string>> said; // the text, and who has it
    for (const auto &row : list.rows) {
        const std::string text = cell_of(row[text_at], words.language()),
                          name = cell_of(row[name_at], words.language());
        if (text.empty()) continue;
        const auto known = std::ranges::find(said, text, &std::pair<std::string, std::string>::first);
        if (known == said.end())
            said.emplace_back(text, name);
        else
            known->second += ", " + name;
    }
    std::vector<std::string> all;
    for (const auto &[text, who] : said)
        all.push_back(said.size() == 1 ? text : words.say("%1: %2", who, text));
    return all;
}

} // namespace roundlay::sheets
