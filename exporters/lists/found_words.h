// What the record says of the wood of each piece, in words, for lists and sheets.
#pragma once

#include "exporters/lists/cut_list.h"
#include "exporters/lists/table.h"
#include "kernel/fabric/as_found.h"

namespace roundlay {

struct FoundWords {
    std::vector<std::string> phrases; ///< what can hurt first
    std::string pegs;                 ///< "5 found, 1 missing"; empty where none was looked for
};

Indexed<FoundWords, Piece> found_words(const Record &record, const Layout &layout, const Voice &voice);

/// Puts them beside the pieces of the list.
void tell_found(CutList &list, const Record &record, const Layout &layout);

/// Columns `pegs_found` and `as_found`: shown on a terminal where something stands in them.
std::vector<Column> found_columns(const CutList &list);
std::vector<Entry> found_cells(const PieceRow &piece);

} // namespace roundlay
