// What stands beside the foundation plan: the logs bedded on it, its steps, and what comes out of it.
#pragma once

#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/layout.h"

#include <vector>

namespace roundlay::sheets {

std::vector<Table> foundation_tables(const Shell &shell, const Layout &layout, const Words &words);

} // namespace roundlay::sheets
