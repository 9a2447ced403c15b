#include "kernel/levelling/csv_table.h"

#include "kernel/levelling/csv_header.h"
#include "kernel/levelling/csv_text.h"
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

std::vector<std::string> keys_of(const std::vector<CsvColumn> &known) {
    std::vector<std::string> names;
    for (const CsvColumn &column : known)
        names.push_back(column.key);
    return names;
}

std::string names_of(const std::vector<CsvColumn> &known) {
    return joined(keys_of(known));
}

std::string unknown(const std::string &cell, const std::string &key, const std::vector<CsvColumn> &known) {
    const auto nearest = nearest_name(key, keys_of(known));
    return "\"" + cell + "\"" + (nearest ? " (did you mean \"" + *nearest + "\"?)" : "");
}

} // namespace

CsvTable::CsvTable(std::string_view bytes, const std::vector<CsvColumn> &known, CsvReport &report)
    : report_(&report) {
    const auto text = csv_text(bytes);
    if (!text) {
        report.problem(1, "text", "this is no text; expected CSV with a header line");
        return;
    }
    CsvLayout layout = csv_layout(*text, known);
    if (layout.split.unclosed > 0)
        report.problem(layout.split.unclosed, "quote", "a quote that opens here is never closed");
    if (layout.split.rows.size() <= layout.header) {
        report.problem(1, "header", "there is no header line; expected the columns " + names_of(known));
        return;
    }
    commas_ = layout.commas;
    header_ = layout.split.rows[layout.header];
    read_headings(known);
    take_rows(std::move(layout.split.rows), layout.header, known);
}

void CsvTable::read_headings(const std::vector<CsvColumn> &known) {
    std::vector<std::string> left_out;
    for (const std::string &cell : header_.cells) {
        CsvHeading heading = heading_of(cell);
        const CsvColumn *column = column_named(known, heading.key);
        if (!column && !heading.key.empty()) left_out.push_back(unknown(trimmed(cell), heading.key, known));
        heading.key = column ? column->key : "";
        if (column && has(column->key))
            report_->problem(header_.line, "twice " + column->key,
                             "the column \"" + column->key + "\" stands there twice");
        headings_.push_back(heading);
    }
    for (const CsvColumn &column : known)
        if (column.needed && !has(column.key))
            report_->problem(header_.line, "missing " + column.key,
                             "the column \"" + column.key + "\" is missing");
    if (left_out.empty()) return;
    report_->notice(header_.line, "left out, as they are not known here: the columns " + joined(left_out) +
                                      "; known are " + names_of(known));
}

/// A mark may begin with #: then its row has all that a log needs.
bool CsvTable::is_log(const CsvRow &remark, const std::vector<CsvColumn> &known) const {
    const std::string first = trimmed(remark.cells.front());
    if (headings_.empty() || headings_.front().key != "mark" || first.size() < 2 || first[1] == ' ' ||
        first[1] == '#')
        return false;
    return std::ranges::all_of(known, [&](const CsvColumn &column) {
        const std::size_t at = column_of(column.key);
        return !column.needed || (at < remark.cells.size() && !trimmed(remark.cells[at]).empty());
    });
}

void CsvTable::take_rows(std::vector<CsvRow> rows, std::size_t header, const std::vector<CsvColumn> &known) {
    std::vector<std::string> above, marks;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CsvRow &row = rows[i];
        if (i < header && !row.remark) above.push_back(std::to_string(row.line));
        if (i <= header) continue;
        if (row.remark && is_log(row, known)) marks.push_back(std::to_string(row.line));
        if (!row.remark || is_log(row, known)) rows_.push_back(std::move(row));
    }
    if (!above.empty()) report_->notice(header_.line, "left out above the header: line " + joined(above));
    if (!marks.empty())
        report_->notice(header_.line, "taken for logs whose mark begins with #: line " + joined(marks) +
                                          "; a blank behind the # makes a comment of a line");
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

std::string CsvTable::told(const std::string &column, const CsvFault &fault, const std::string &text) const {
    const std::string message = column + " \"" + text + "\" " +
                                (fault.kind == CsvFault::unreadable ? "is no length: " : "") + fault.message;
    if (fault.kind != CsvFault::no_unit) return message;
    return message + "; write it behind the number, or once for all into the header: \"" + column + " (mm)\"";
}

std::optional<double> CsvTable::length(std::size_t row, const std::string &column, const CsvBounds &bounds,
                                       bool needed) const {
    const std::string text = cell(row, column);
    if (text.empty()) {
        if (needed) problem(row, "empty " + column, column + " is missing");
        return {};
    }
    const auto read = length_in(text, headings_[column_of(column)].unit, bounds, commas_);
    if (const double *mm = std::get_if<double>(&read)) return *mm;
    const CsvFault &fault = std::get<CsvFault>(read);
    problem(row, column + std::to_string(fault.kind), told(column, fault, text));
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
            column + " \"" + written + "\" is none; expected a whole number from " + first + " to " +
                std::to_string(most));
    return {};
}

void CsvTable::problem(std::size_t row, const std::string &kind, const std::string &message) const {
    report_->problem(row < rows_.size() ? rows_[row].line : std::max(1, header_.line), kind, message);
}

} // namespace roundlay
