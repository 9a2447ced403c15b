#include "kernel/levelling/csv_header.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr std::size_t most_above = 20; ///< rows in which the header is looked for

std::vector<std::string> sorted_words(const std::string &key) {
    std::vector<std::string> words(1);
    for (const char c : key)
        if (c == '_')
            words.emplace_back();
        else
            words.back() += c;
    std::ranges::sort(words);
    return words;
}

std::size_t names_in(const CsvRow &row, const std::vector<CsvColumn> &known) {
    return static_cast<std::size_t>(std::ranges::count_if(row.cells, [&](const std::string &cell) {
        return column_named(known, heading_of(cell).key) != nullptr;
    }));
}

/// Does a number have a comma in it, which can only be a decimal one?
bool has_decimal_commas(const CsvRows &split, char separator) {
    if (separator != ',')
        for (const CsvRow &row : split.rows)
            for (const std::string &cell : row.cells)
                for (std::size_t i = 1; i + 1 < cell.size(); ++i)
                    if (cell[i] == ',' && cell[i - 1] >= '0' && cell[i - 1] <= '9' && cell[i + 1] >= '0' &&
                        cell[i + 1] <= '9')
                        return true;
    return false;
}

/// The first line of some spreadsheets' files: `sep=;`.
std::optional<char> stated_separator(std::string_view text) {
    const std::string_view line = text.substr(0, text.find('\n'));
    if ((line.starts_with("sep=") || line.starts_with("SEP=")) && line.size() == 5) return line[4];
    return {};
}

CsvLayout layout_by(std::string_view text, char separator, const std::vector<CsvColumn> &known,
                    std::size_t &names) {
    CsvLayout layout{split_csv(text, separator), 0, false};
    const auto &rows = layout.split.rows;
    names = 0;
    for (std::size_t i = 0; i < std::min(rows.size(), most_above); ++i)
        if (const std::size_t in_row = rows[i].remark ? 0 : names_in(rows[i], known); in_row > names)
            names = in_row, layout.header = i;
    if (names == 0) // then the first line that is no comment is told as the header it should be
        while (layout.header < rows.size() && rows[layout.header].remark)
            ++layout.header;
    layout.commas = has_decimal_commas(layout.split, separator);
    return layout;
}

} // namespace

const CsvColumn *column_named(const std::vector<CsvColumn> &known, const std::string &key) {
    const auto words = sorted_words(key);
    const auto found = std::ranges::find_if(known, [&](const CsvColumn &column) {
        return sorted_words(column.key) == words || (!column.also.empty() && column.also == key);
    });
    return found == known.end() ? nullptr : &*found;
}

CsvLayout csv_layout(std::string_view text, const std::vector<CsvColumn> &known) {
    std::size_t names = 0;
    if (const auto separator = stated_separator(text)) {
        std::string rest(text);
        rest.replace(0, 5, ""); // its line stays, empty, so that lines are counted right
        return layout_by(rest, *separator, known, names);
    }
    CsvLayout best = layout_by(text, ',', known, names);
    for (const char separator : {';', '\t'}) {
        std::size_t more = 0;
        CsvLayout other = layout_by(text, separator, known, more);
        if (more > names) best = std::move(other), names = more;
    }
    return best;
}

} // namespace roundlay
