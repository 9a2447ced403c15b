#include "exporters/lists/table.h"
#include "exporters/words/decimal_mark.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Code points, which is what a terminal's columns are for the letters used here.
std::size_t columns_of(const std::string &text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

/// What a person stated must not steer the terminal.
std::string without_controls(std::string text) {
    for (char &c : text)
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = ' ';
    return text;
}

struct Shown {
    Language language;

    std::string operator()(const std::string &text) const { return without_controls(text); }
    std::string operator()(const Number &n) const {
        return with_decimal_mark(n.shown.empty() ? n.digits : n.shown, language);
    }
    std::string operator()(const std::vector<std::string> &list) const {
        if (list.empty()) return "";
        const std::string more = list.size() > 1 ? " +" + std::to_string(list.size() - 1) : "";
        return without_controls(list.front()) + more;
    }
};

struct TextColumn {
    std::vector<std::string> lines; ///< the title first
    std::size_t width = 0;
    bool right = false;
};

TextColumn column_of(const Table &table, std::size_t i, Language language) {
    TextColumn column{{table.columns[i].title}};
    for (const auto &row : table.rows) {
        column.lines.push_back(std::visit(Shown{language}, row[i]));
        column.right = column.right || std::holds_alternative<Number>(row[i]);
    }
    for (const std::string &line : column.lines)
        column.width = std::max(column.width, columns_of(line));
    return column;
}

std::string padded(const TextColumn &column, std::size_t line) {
    const std::string &text = column.lines[line];
    const std::string blanks(column.width - columns_of(text), ' ');
    return column.right ? blanks + text : text + blanks;
}

} // namespace

std::string to_text(const Table &table, Language language) {
    std::vector<TextColumn> columns;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        if (!table.columns[i].title.empty()) columns.push_back(column_of(table, i, language));
    std::string text;
    for (std::size_t line = 0; line <= table.rows.size(); ++line) {
        std::string all;
        for (const TextColumn &column : columns)
            all += (all.empty() ? "" : "  ") + padded(column, line);
        all.erase(all.find_last_not_of(' ') + 1);
        text += all + "\n";
    }
    return text;
}

} // namespace roundlay
