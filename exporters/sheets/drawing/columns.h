// Columns of tables in few words.
#pragma once

#include "exporters/sheets/drawing/table.h"

#include <utility>

namespace roundlay::sheets {

inline Column flush_left(std::string heading, double widest) {
    return {std::move(heading), Across::left, widest};
}

inline Column flush_right(std::string heading, double widest) {
    return {std::move(heading), Across::right, widest};
}

/// What a stick measures.
inline void add_sizes(std::vector<Column> &columns) {
    for (Column column : {flush_right("Length", 30), flush_right("Width", 22), flush_right("Height", 22)})
        columns.push_back(std::move(column));
}

} // namespace roundlay::sheets
