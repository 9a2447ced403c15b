// Columns of tables in few words.
#pragma once

#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"

#include <utility>

namespace roundlay::sheets {

/// A table with nothing but its title, and how that goes on where the table does.
inline Table table_called(const Words &words, const std::string &title) {
    Table table;
    table.title = title;
    table.continued = words.say("%1, continued", title);
    return table;
}

inline Column flush_left(std::string heading, double widest) {
    return {std::move(heading), Across::left, widest};
}

inline Column flush_right(std::string heading, double widest) {
    return {std::move(heading), Across::right, widest};
}

/// What a stick measures.
inline void add_sizes(std::vector<Column> &columns, const Words &words) {
    columns.push_back(flush_right(words.say("Length"), 30));
    columns.push_back(flush_right(words.say("Width"), 22));
    columns.push_back(flush_right(words.say("Height"), 22));
}

} // namespace roundlay::sheets
