// Tables on paper.
#pragma once

#include "exporters/sheets/drawing/block.h"

#include <limits>
#include <string>
#include <vector>

namespace roundlay::sheets {

struct Column {
    std::string heading; ///< may be empty in all columns: then there is no heading row
    Across align = Across::left;
    double widest = 60; ///< millimetres; longer words are wrapped
};

struct Table {
    std::string title;     ///< above the table; may be empty
    std::string continued; ///< the title of a part that is not the first; empty = the same
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows; ///< as many cells as columns
    double height = 2.5;                        ///< of the lettering
    /// Of a heading, mm: a longer one is broken within.
    double longest_word = std::numeric_limits<double>::infinity();
};

/// The table with its widest columns narrowed, their words wrapped more often, until it is no wider than
/// that; where the words of its headings are too wide for it, they are broken. As narrow as can be where not
/// even that is enough.
Table narrowed(Table table, double width);

/// A table whose words are measured and wrapped, ready to be drawn whole or in parts that look alike.
class LaidTable {
  public:
    /// No part of it with one row is higher than `tallest`: what a longer row says goes on in the rows after
    /// it.
    explicit LaidTable(const Table &table, double tallest = std::numeric_limits<double>::infinity());

    std::size_t rows() const { return rows_.size(); }
    double width() const;
    const std::vector<double> &widths() const { return widths_; }
    /// Rows [first, last) with headings; a part that is not the first says in its title that it goes on.
    double height(std::size_t first, std::size_t last) const;
    /// What those rows take, the lower left corner at the origin.
    Rect room(std::size_t first, std::size_t last) const;
    /// Drawn into that room.
    Block drawn(std::size_t first, std::size_t last) const;
    Block drawn() const { return drawn(0, rows()); }
    /// How many rows from `first` on fit into the height. 0 = not even one.
    std::size_t rows_that_fit(std::size_t first, double height) const;

  private:
    struct Row {
        std::vector<std::vector<std::string>> cells; ///< wrapped
        bool bold = false;
        double height = 0;
    };
    struct Pen;

    std::string title(std::size_t first) const;
    Row row_of(const std::vector<std::string> &cells, bool bold) const;
    Row row_with(std::vector<std::vector<std::string>> lines, bool bold) const;
    void add_row(Row row, double tallest);

    std::string title_, continued_;
    double lettering_;
    std::vector<Across> aligns_;
    std::vector<double> widths_;
    std::vector<Row> heading_; ///< one or none
    std::vector<Row> rows_;
};

} // namespace roundlay::sheets
