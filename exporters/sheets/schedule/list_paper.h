// A list as a table on paper.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Its columns that have a title, or those of them whose keys are named.
Table on_paper(const roundlay::Table &list, const Words &words, const std::string &title,
               const std::vector<std::string> &keys = {});

/// Each text of that column once, with the names of the rows that have it where not all rows have the same:
/// `names` is the key of what a row is called by. Throws std::logic_error where there is no such column.
std::vector<std::string> said_once(const roundlay::Table &list, const std::string &key,
                                   const std::string &names, const Words &words);

} // namespace roundlay::sheets
