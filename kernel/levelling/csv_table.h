// CSV as rows of cells, before anybody knows what they mean.
#pragma once

#include "kernel/levelling/pile.h"

#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

struct CsvRow {
    int line = 0; ///< where it starts, from 1
    std::vector<std::string> cells;
};

/// Splits by RFC 4180, at the separator that the first line holds most of. Blank lines are left out. A quote
/// that is never closed is a problem.
std::vector<CsvRow> split_csv(std::string_view text, std::vector<CsvProblem> &problems);

/// Cells by the names in the header.
class CsvTable {
  public:
    /// Reports names that are not `known`, `needed` ones that are missing, and doubled ones.
    CsvTable(std::string_view text, const std::vector<std::string> &known, std::size_t needed,
             std::vector<CsvProblem> &problems);

    std::size_t rows() const { return rows_.size(); }
    int line(std::size_t row) const { return rows_[row].line; }
    /// Without blanks at either side; empty where the column or cell is missing.
    std::string cell(std::size_t row, const std::string &column) const;

    /// A length within (0, most] mm; a problem else. Nothing for an empty cell, which is a problem where
    /// `needed`.
    std::optional<double> length(std::size_t row, const std::string &column, double most, bool needed) const;

    void problem(std::size_t row, const std::string &message) const;

  private:
    std::vector<std::string> columns_;
    std::vector<CsvRow> rows_;
    std::vector<CsvProblem> *problems_;
};

} // namespace roundlay
