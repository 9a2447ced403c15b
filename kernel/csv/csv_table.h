// Cells of a CSV file by the names in its header, as people and their spreadsheets write them.
//
// Commas, semicolons or tabs between the values; columns in any order, in capitals or not, with their unit in
// the header or in the cells; lines above the header, empty lines and comments (#) and columns that are not
// known are left out, and what was left out is told. The columns may be named in French: messages name them
// as the header does. A row with more cells than the header has columns is a problem: a value was parted, or
// is lost.
#pragma once

#include "kernel/csv/csv_measure.h"
#include "kernel/csv/csv_report.h"
#include "kernel/csv/csv_rows.h"

namespace roundlay {

struct CsvColumn {
    std::string key;
    bool needed = false;
    std::vector<std::string> french = {}; ///< its French names; the first is told
    /// As the first column its values may begin with #: such a row is no comment where it has all that is
    /// needed.
    bool hash = false;
};

struct CsvLayout;

class CsvTable {
  public:
    /// Reports a file that is no text, columns that are missing and doubled ones; tells of those that are not
    /// known.
    CsvTable(std::string_view bytes, const std::vector<CsvColumn> &known, CsvReport &report);
    /// Of a spreadsheet, whose rows are cells already.
    CsvTable(CsvRows rows, const std::vector<CsvColumn> &known, CsvReport &report);

    std::size_t rows() const { return rows_.size(); }
    int line(std::size_t row) const { return rows_[row].line; }
    /// Are its columns named in French, most of them?
    bool in_french() const { return french_; }
    /// The column as the header names it; where it is missing, in the header's language.
    std::string name(const std::string &column) const;
    /// That the header states for the column's numbers, as parse_length reads it; empty where it states none.
    std::string unit(const std::string &column) const {
        return has(column) ? headings_[column_of(column)].unit : std::string();
    }
    bool has(const std::string &column) const { return column_of(column) < headings_.size(); }
    /// Without blanks at either side; empty where the column or cell is missing.
    std::string cell(std::size_t row, const std::string &column) const;
    /// The same in lower case and without accents: for words.
    std::string word(std::size_t row, const std::string &column) const;

    /// A length within the bounds in mm; a problem else. Nothing for an empty cell, which is a problem where
    /// `needed`.
    std::optional<double> length(std::size_t row, const std::string &column, const CsvBounds &bounds,
                                 bool needed) const;
    /// A whole number from 1 to `most`, also written 3.0 or 3,0; a problem else, and nothing for an empty
    /// cell. `first` says what 1 is.
    std::optional<int> count(std::size_t row, const std::string &column, int most, const char *first) const;

    /// A problem where the row has a value beyond the header's last column.
    void check_end(std::size_t row) const;

    /// `kind` of problem in that column.
    void problem(std::size_t row, const std::string &kind, const std::string &message) const;

  private:
    std::size_t column_of(const std::string &key) const;
    void take(CsvLayout layout);
    void read_headings();
    void take_rows(std::vector<CsvRow> rows, std::size_t header);
    bool is_row(const CsvRow &remark) const;
    std::string told(std::size_t row, const std::string &column, const CsvFault &fault) const;
    bool parted_at_comma(std::size_t row, std::size_t at) const;
    void tell_nameless() const;
    std::string names() const;

    std::vector<CsvColumn> known_;
    CsvRow header_;
    std::vector<CsvHeading> headings_; ///< keys as they are known here; empty where a column is left out
    std::vector<CsvRow> rows_;
    bool commas_ = false; ///< it writes decimal commas
    bool french_ = false;
    char separator_ = ',';
    CsvReport *report_;
};

} // namespace roundlay
