// Tables on paper.
#pragma once

#include "exporters/sheets/drawing/block.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct Column {
    std::string heading;       ///< may be empty in all columns: then there is no heading row
    Across align = Across::left;
    double widest = 60;        ///< millimetres; longer words are wrapped
};

struct Table {
    std::string title;         ///< above the table; may be empty
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows; ///< as many cells as columns
    double height = 2.5;       ///< of the lettering
};

/// Drawn with its room's lower left corner at the origin.
Block drawn(const Table &table);

/// Rows [first, last) under the same headings; the title says that it goes on where first > 0.
Table part_of(const Table &table, std::size_t first, std::size_t last);

/// How many rows from `first` on fit into the height. 0 = not even one.
std::size_t rows_that_fit(const Table &table, std::size_t first, double height);

} // namespace roundlay::sheets
