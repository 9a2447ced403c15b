// Cells of a CSV file by the names in its header, as people and their spreadsheets write them.
//
// Commas, semicolons or tabs between the values; columns in any order, in capitals or not, with their unit in
// the header or in the cells; lines above the header, empty lines and comments (#) and columns that are not
// known are left out, and what was left out is told. The columns may be named in French.
#pragma once

#include "kernel/levelling/csv_measure.h"
#include "kernel/levelling/csv_report.h"
#include "kernel/levelling/csv_rows.h"

namespace roundlay {

struct CsvColumn {
    std::string key;
    bool needed = false;
    std::vector<std::string> also = {}; ///< other names for it, in plain letters
};

class CsvTable {
  public:
    /// Reports a file that is no text, columns that are missing and doubled ones; tells of those that are not
    /// known.
    CsvTable(std::string_view bytes, const std::vector<CsvColumn> &known, CsvReport &report);

    std::size_t rows() const { return rows_.size(); }
    int line(std::size_t row) const { return rows_[row].line; }
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

    /// `kind` of problem in that column.
    void problem(std::size_t row, const std::string &kind, const std::string &message) const;

  private:
    std::size_t column_of(const std::string &key) const;
    void read_headings(const std::vector<CsvColumn> &known);
    void take_rows(std::vector<CsvRow> rows, std::size_t header, const std::vector<CsvColumn> &known);
    bool is_log(const CsvRow &remark, const std::vector<CsvColumn> &known) const;
    std::string told(const std::string &column, const CsvFault &fault, const std::string &text) const;

    CsvRow header_;
    std::vector<CsvHeading> headings_; ///< keys as they are known here; empty where a column is left out
    std::vector<CsvRow> rows_;
    bool commas_ = false; ///< it writes decimal commas
    CsvReport *report_;
};

} // namespace roundlay
