// A list as a table on paper.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"

#include <string>

namespace roundlay::sheets {

/// Its columns that have a title, or those of them whose keys are named.
Table on_paper(const roundlay::Table &list, const Words &words, const std::string &title,
               const std::vector<std::string> &keys = {});

} // namespace roundlay::sheets
