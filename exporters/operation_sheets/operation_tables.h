// The tables of one sheet of operations. Private to this room.
#pragma once

#include "exporters/machining/operation.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"

namespace roundlay::sheets {

Table stock_table(const machining::OperationList &list, const Words &words);
Table setup_table(const machining::OperationList &list, const Words &words);
/// One, or two side by side in meaning where paper so wide, mm, would break the words of one.
std::vector<Table> operations_tables(const machining::OperationList &list, const Words &words, double width);
/// What columns mean, and the caution.
Table reading_table(const Words &words);

} // namespace roundlay::sheets
