// Tables on the sheets of a set: none is left out, whatever its size.
#pragma once

#include "exporters/sheets/frame/options.h"

namespace roundlay::sheets {

/// A boxed note that does not fit the title block.
Table note_table(const std::string &words, double width);

/// In place of a drawing: "too large for this paper at any scale".
Table not_drawn(const std::string &what);

/// Tags that found no room in a drawing.
Table left_over_table(const std::string &title, const std::vector<std::string> &tags);

/// The table no wider than a sheet of that size has room for.
Table fitted(const Table &table, PaperSize size);

/// Puts a fitted table whole on one of the pages from `first` on, or on a new one; in parts, over as many as
/// it takes, where it is too high for any.
void put_fitted(std::vector<Page> &pages, PaperSize size, const Table &table, std::size_t first);

/// The same from the last page on, of any table.
void put_on(std::vector<Page> &pages, PaperSize size, const Table &table);

} // namespace roundlay::sheets
