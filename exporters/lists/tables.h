// The tables of the cut list, ready to be spelled. Lengths stand in the shell's units and in millimetres.
#pragma once

#include "exporters/lists/cut_list.h"
#include "exporters/lists/table.h"

namespace roundlay {

Table model_table(const CutList &list); ///< one row for each distinct piece
Table piece_table(const CutList &list); ///< one row for each tag
/// What their lengths are rounded to.
std::string peg_words(const CutList &list);
Table peg_table(const CutList &list); ///< one row for each size of peg
/// The same of sticks.
std::string order_words(const CutList &list);
Table order_table(const CutList &list); ///< one row for each section and length to order
Table total_table(const CutList &list); ///< counts, volumes, weights, their basis and the caution

} // namespace roundlay
