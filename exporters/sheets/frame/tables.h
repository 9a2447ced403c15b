// Tables on the sheets of a set: none is left out, whatever its size.
#pragma once

#include "exporters/sheets/frame/options.h"

#include <span>

namespace roundlay::sheets {

/// A boxed note that does not fit the title block.
Table note_table(const Words &words, const std::string &note, double width);

/// In place of a drawing: "the plan does not fit this paper at any scale". `what` with a capital.
Table not_drawn(const Words &words, const std::string &what);

/// A sheet with nothing but that.
std::vector<Page> pages_not_drawn(PaperSize size, const Words &words, const std::string &what);

/// Tags that found no room in a drawing.
Table left_over_table(const Words &words, const std::string &title, const std::vector<std::string> &tags);

/// What the record says of those pieces, by their tags, pegs too; without rows where it says nothing.
Table found_table(const SheetOptions &options, const Layout &layout, std::span<const Index<Piece>> pieces,
                  const Words &words);

/// Whether a list of pieces on that paper has room for a column of it. Else it follows the list, as above.
bool has_room_for_notes(PaperSize size);

/// Columns of a list of pieces for that, where anything is said of any of them, and the cells of one.
void add_found_columns(const SheetOptions &options, const Words &words, bool pegs,
                       std::vector<Column> &columns);
void add_found_cells(const SheetOptions &options, Index<Piece> piece, bool pegs,
                     std::vector<std::string> &row);

/// A table as sheets of one size have room for it: laid once, put on as many as may be tried.
struct FittedTable {
    FittedTable(const Table &table, PaperSize size);

    SharedTable laid; ///< no wider than such a sheet, no row higher
    /// Of one column: ever wider, to the whole width, for where it finds no room in a column.
    std::vector<SharedTable> wider;
};

/// Puts the table whole on one of the pages from `first` on, or on a new one; in parts, over as many as it
/// takes, where it is too high for any.
void put_fitted(std::vector<Page> &pages, PaperSize size, const FittedTable &table, std::size_t first);

/// The same from the last page on.
void put_on(std::vector<Page> &pages, PaperSize size, const Table &table);

} // namespace roundlay::sheets
