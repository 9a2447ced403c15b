#include "kernel/csv/csv_header.h"

#include "kernel/measure/character.h"

#include <algorithm>
#include <array>

namespace roundlay {

namespace {

constexpr std::size_t most_above = 20; ///< rows in which the header is looked for

/// French ones that a column's name has or leaves out: "hauteur au gros bout", "hauteur gros bout".
constexpr std::array<std::string_view, 9> little = {"a", "au", "de", "des", "du", "en", "la", "le", "sur"};

std::vector<std::string> sorted_words(const std::string &key) {
    std::vector<std::string> words(1);
    for (const char c : plain_letters(key))
        if (c == '_')
            words.emplace_back();
        else
            words.back() += c;
    std::erase_if(words, [](const std::string &word) { return std::ranges::count(little, word) > 0; });
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

/// How well a separator goes with a text: by the names it finds, and where it finds none by its columns.
struct Fit {
    std::size_t names = 0, columns = 0;
    auto operator<=>(const Fit &) const = default;
};

/// Where no name is known: the first line that has columns, and no comment, is told as the header it should
/// be.
std::size_t likely_header(const std::vector<CsvRow> &rows) {
    const auto first = [&](std::size_t columns) {
        return static_cast<std::size_t>(
            std::ranges::find_if(
                rows, [&](const CsvRow &row) { return !row.remark && row.cells.size() >= columns; }) -
            rows.begin());
    };
    const std::size_t header = first(2);
    return header < std::min(rows.size(), most_above) ? header : first(1);
}

CsvLayout layout_of(CsvRows split, char separator, const std::vector<CsvColumn> &known, Fit &fit) {
    CsvLayout layout{std::move(split), 0, false, separator};
    const auto &rows = layout.split.rows;
    fit = {};
    for (std::size_t i = 0; i < std::min(rows.size(), most_above); ++i)
        if (const std::size_t in_row = rows[i].remark ? 0 : names_in(rows[i], known); in_row > fit.names)
            fit.names = in_row, layout.header = i;
    if (fit.names == 0) {
        layout.header = likely_header(rows);
        if (layout.header < rows.size()) fit.columns = rows[layout.header].cells.size();
    }
    layout.commas = has_decimal_commas(layout.split, separator);
    return layout;
}

CsvLayout layout_by(std::string_view text, char separator, const std::vector<CsvColumn> &known, Fit &fit) {
    return layout_of(split_csv(text, separator), separator, known, fit);
}

} // namespace

CsvLayout csv_layout(CsvRows rows, const std::vector<CsvColumn> &known) {
    Fit fit;
    return layout_of(std::move(rows), no_separator, known, fit);
}

bool is_english(const CsvColumn &column, const std::string &key) {
    return sorted_words(column.key) == sorted_words(key);
}

const CsvColumn *column_named(const std::vector<CsvColumn> &known, const std::string &key) {
    const auto words = sorted_words(key);
    const auto found = std::ranges::find_if(known, [&](const CsvColumn &column) {
        return sorted_words(column.key) == words ||
               std::ranges::any_of(column.french,
                                   [&](const std::string &name) { return sorted_words(name) == words; });
    });
    return found == known.end() ? nullptr : &*found;
}

CsvLayout csv_layout(std::string_view text, const std::vector<CsvColumn> &known) {
    Fit fit;
    if (const auto separator = stated_separator(text)) {
        std::string rest(text);
        rest.replace(0, 5, ""); // its line stays, empty, so that lines are counted right
        return layout_by(rest, *separator, known, fit);
    }
    CsvLayout best = layout_by(text, ',', known, fit);
    for (const char separator : {';', '\t'}) {
        Fit better;
        CsvLayout other = layout_by(text, separator, known, better);
        if (better > fit) best = std::move(other), fit = better;
    }
    return best;
}

} // namespace roundlay
