#include "kernel/csv/csv_table.h"

#include "kernel/csv/csv_header.h"
#include "kernel/csv/csv_text.h"
#include "kernel/measure/character.h"
#include "kernel/measure/nearest_name.h"

#include <algorithm>
#include <charconv>

namespace roundlay {

namespace {

std::string joined(const std::vector<std::string> &names) {
    std::string text;
    for (const std::string &name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

std::string in_words(std::string name) {
    std::ranges::replace(name, '_', ' ');
    return name;
}

std::string title(const CsvColumn &column, bool french) {
    return french && !column.french.empty() ? in_words(column.french.front()) : column.key;
}

std::string unknown(const std::string &cell, const std::string &key, const std::vector<std::string> &known) {
    const auto nearest = nearest_name(key, known);
    return "\"" + cell + "\"" + (nearest ? " (did you mean \"" + *nearest + "\"?)" : "");
}

std::vector<std::string> titles(const std::vector<CsvColumn> &known, bool french) {
    std::vector<std::string> names;
    names.reserve(known.size());
    for (const CsvColumn &column : known)
        names.push_back(title(column, french));
    return names;
}

bool mostly_french(const CsvRow &header, const std::vector<CsvColumn> &known) {
    int french = 0, english = 0;
    for (const std::string &cell : header.cells) {
        const std::string key = heading_of(cell).key;
        if (const CsvColumn *column = column_named(known, key))
            ++(is_english(*column, key) ? english : french);
    }
    return french > english;
}

} // namespace

CsvTable::CsvTable(std::string_view bytes, const std::vector<CsvColumn> &known, CsvReport &report)
    : known_(known), report_(&report) {
    const auto text = csv_text(bytes);
    if (!text) {
        report.problem(1, "text", "this is no text; expected CSV with a header line");
        return;
    }
    take(csv_layout(*text, known));
}

CsvTable::CsvTable(CsvRows rows, const std::vector<CsvColumn> &known, CsvReport &report)
    : known_(known), report_(&report) {
    take(csv_layout(std::move(rows), known));
}

void CsvTable::take(CsvLayout layout) {
    if (layout.split.unclosed > 0)
        report_->problem(layout.split.unclosed, "quote", "a quote that opens here is never closed");
    if (layout.split.rows.size() <= layout.header) {
        report_->problem(1, "header", "there is no header line; expected the columns " + names());
        return;
    }
    commas_ = layout.commas;
    separator_ = layout.separator;
    header_ = layout.split.rows[layout.header];
    french_ = mostly_french(header_, known_);
    read_headings();
    take_rows(std::move(layout.split.rows), layout.header);
    tell_nameless();
}

std::string CsvTable::names() const {
    return joined(titles(known_, french_));
}

std::string CsvTable::name(const std::string &column) const {
    if (has(column)) return trimmed(headings_[column_of(column)].name);
    return title(*std::ranges::find(known_, column, &CsvColumn::key), french_);
}

void CsvTable::read_headings() {
    std::vector<std::string> left_out;
    for (const std::string &cell : header_.cells) {
        CsvHeading heading = heading_of(cell);
        const CsvColumn *column = column_named(known_, heading.key);
        if (!column && !heading.unit.empty()) // "numbers_in" has no unit: it is called so
            if ((column = column_named(known_, heading.key + "_" + heading.unit)))
                heading.name = cell, heading.unit.clear();
        if (!column && !heading.key.empty())
            left_out.push_back(unknown(trimmed(cell), in_words(heading.key), titles(known_, french_)));
        heading.key = column ? column->key : "";
        if (column && has(column->key))
            report_->problem(header_.line, "twice " + column->key,
                             "the column \"" + name(column->key) + "\" stands there twice");
        headings_.push_back(heading);
    }
    while (!headings_.empty() && trimmed(headings_.back().name).empty())
        headings_.pop_back();
    for (const CsvColumn &column : known_)
        if (column.needed && !has(column.key))
            report_->problem(header_.line, "missing " + column.key,
                             "the column \"" + name(column.key) + "\" is missing");
    if (left_out.empty()) return;
    report_->notice(header_.line, "left out, as they are not known here: the columns " + joined(left_out) +
                                      "; known are " + names());
}

/// What names a row may begin with #: then the row has all that it needs.
bool CsvTable::is_row(const CsvRow &remark) const {
    const std::string first = trimmed(remark.cells.front());
    const auto named =
        std::ranges::find(known_, headings_.empty() ? "" : headings_.front().key, &CsvColumn::key);
    if (named == known_.end() || !named->hash || first.size() < 2 || first[1] == ' ' || first[1] == '#')
        return false;
    return std::ranges::all_of(known_, [&](const CsvColumn &column) {
        const std::size_t at = column_of(column.key);
        return !column.needed || (at < remark.cells.size() && !trimmed(remark.cells[at]).empty());
    });
}

void CsvTable::take_rows(std::vector<CsvRow> rows, std::size_t header) {
    std::vector<std::string> above, marks;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CsvRow &row = rows[i];
        if (i < header && !row.remark) above.push_back(std::to_string(row.line));
        if (i <= header) continue;
        if (row.remark && is_row(row)) marks.push_back(std::to_string(row.line));
        if (!row.remark || is_row(row)) rows_.push_back(std::move(row));
    }
    if (!above.empty()) report_->notice(header_.line, "left out above the header: line " + joined(above));
    if (!marks.empty())
        report_->notice(header_.line, "taken for logs whose " + headings_.front().key +
                                          " begins with #: line " + joined(marks) +
                                          "; a blank behind the # makes a comment of a line");
}

void CsvTable::tell_nameless() const {
    for (std::size_t at = 0; at < headings_.size(); ++at) {
        if (!trimmed(headings_[at].name).empty()) continue;
        const auto row = std::ranges::find_if(
            rows_, [&](const CsvRow &r) { return at < r.cells.size() && !trimmed(r.cells[at]).empty(); });
        if (row != rows_.end())
            report_->notice(header_.line, "left out: column " + std::to_string(at + 1) +
                                              ", which has no name; in line " + std::to_string(row->line) +
                                              " it holds \"" + trimmed(row->cells[at]) + "\"");
    }
}

std::size_t CsvTable::column_of(const std::string &key) const {
    return static_cast<std::size_t>(std::ranges::find(headings_, key, &CsvHeading::key) - headings_.begin());
}

std::string CsvTable::cell(std::size_t row, const std::string &column) const {
    const std::size_t at = column_of(column);
    const auto &cells = rows_[row].cells;
    return at < cells.size() && at < headings_.size() ? trimmed(cells[at]) : std::string();
}

std::string CsvTable::word(std::size_t row, const std::string &column) const {
    return plain_letters(cell(row, column));
}

std::string CsvTable::told(std::size_t row, const std::string &column, const CsvFault &fault) const {
    std::string message = name(column) + " \"" + cell(row, column) + "\" " +
                          (fault.kind == CsvFault::unreadable ? "is no length: " : "") + fault.message;
    if (fault.kind == CsvFault::no_unit)
        message +=
            "; write it behind the number, or once for all into the header: \"" + name(column) + " (mm)\"";
    const auto &cells = rows_[row].cells;
    for (const std::size_t at : {column_of(column), column_of(column) + 1})
        if (fault.kind == CsvFault::out_of_bounds && parted_at_comma(row, at))
            return message + "; if \"" + trimmed(cells[at - 1]) + "," + trimmed(cells[at]) +
                   "\" is one value, it stands in quotes";
    return message;
}

/// `250,5` without quotes in a file that has commas between its columns: 250 and 5.
bool CsvTable::parted_at_comma(std::size_t row, std::size_t at) const {
    constexpr std::size_t decimals = 2;
    const auto &cells = rows_[row].cells;
    if (separator_ != ',' || at == 0 || at >= cells.size()) return false;
    const std::string whole = trimmed(cells[at - 1]), part = trimmed(cells[at]);
    const auto digits = [](const std::string &text) {
        return std::min(text.find_first_not_of("0123456789"), text.size());
    };
    return whole.size() > 1 && digits(whole) == whole.size() && digits(part) > 0 && digits(part) <= decimals;
}

void CsvTable::check_end(std::size_t row) const {
    const auto &cells = rows_[row].cells;
    std::size_t at = headings_.size();
    while (at < cells.size() && trimmed(cells[at]).empty())
        ++at;
    if (at >= cells.size()) return;
    const std::string beyond = trimmed(cells[at]);
    if (separator_ == no_separator)
        return problem(row, "beyond",
                       "\"" + beyond +
                           "\" stands beyond the last column that the header has: a value of its "
                           "own needs a column");
    for (std::size_t i = 1; i <= at && !parted_at_comma(row, at); ++i)
        if (parted_at_comma(row, i)) at = i;
    const char *mark = separator_ == ','    ? "comma (a decimal one too)"
                       : separator_ == ';'  ? "semicolon"
                       : separator_ == '\t' ? "tab"
                                            : "separator";
    std::string one = cells[at - 1] + separator_ + cells[at];
    problem(row, "beyond",
            "\"" + beyond + "\" stands beyond the last column that the header has; a value with a " + mark +
                " in it stands in quotes: \"" + trimmed(one) +
                "\"; what is a value of its own needs a column");
}

std::optional<double> CsvTable::length(std::size_t row, const std::string &column, const CsvBounds &bounds,
                                       bool needed) const {
    const std::string text = cell(row, column);
    if (text.empty()) {
        if (needed) problem(row, "empty " + column, name(column) + " is missing");
        return {};
    }
    const auto read = length_in(text, headings_[column_of(column)].unit, bounds, commas_);
    if (const double *mm = std::get_if<double>(&read)) return *mm;
    const CsvFault &fault = std::get<CsvFault>(read);
    problem(row, column + std::to_string(fault.kind), told(row, column, fault));
    return {};
}

std::optional<int> CsvTable::count(std::size_t row, const std::string &column, int most,
                                   const char *first) const {
    std::string text = cell(row, column);
    if (text.empty()) return {};
    const std::string written = text;
    if (text.ends_with(".0") || text.ends_with(",0")) text.resize(text.size() - 2);
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error == std::errc() && end == text.data() + text.size() && value >= 1 && value <= most) return value;
    problem(row, "no " + column,
            name(column) + " \"" + written + "\" is none; expected a whole number from " + first + " to " +
                std::to_string(most));
    return {};
}

void CsvTable::problem(std::size_t row, const std::string &kind, const std::string &message) const {
    report_->problem(row < rows_.size() ? rows_[row].line : std::max(1, header_.line), kind, message);
}

} // namespace roundlay
