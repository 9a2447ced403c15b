// The cells of an XLSX file as text, and what stands in their way.
//
// Numbers come as the shortest decimal that means them, percentages with their sign ("31 %", which a
// spreadsheet keeps as 0.31), dates by ISO 8601; rich text without its looks. Formulas are not worked out,
// and a time of day is not turned back into what was typed: both are told, with their cell, and the cell is
// empty here.
#pragma once

#include "kernel/csv/csv_rows.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace roundlay {

/// "C7", and what is the matter there.
struct SheetRemark {
    int row = 0; ///< from 1
    std::string cell, message;
};

struct SheetNumber {
    int row = 0;            ///< from 1
    std::size_t column = 0; ///< from 0
    std::string cell, written;
};

/// A cell that holds a day. Nobody knows whether a day was meant: 3/4 and 3-10 become days too.
struct SheetDate {
    int row = 0;            ///< from 1
    std::size_t column = 0; ///< from 0
    std::string cell, iso;
    bool whole = true; ///< the spreadsheet shows day, month and year
};

struct ReadSheet {
    std::string name;
    CsvRows rows; ///< `line` is the sheet's row; rows without anything in them are left out
    std::vector<SheetRemark> remarks; ///< cells whose content is not taken, and merged ones
    std::vector<SheetRemark> doubts;  ///< cells whose content is taken, and should be looked at
    std::vector<SheetDate> dates;     ///< in `rows` as well
    /// Cells typed as a number with one digit behind the point: 3.1, of which nobody knows whether it was
    /// 3.10.
    std::vector<SheetNumber> one_decimal;
};

/// All sheets with cells, in the order of their tabs; or one sentence why the bytes are no such file. Takes
/// any bytes; refuses what grows over 64 MB when it is unpacked.
std::variant<std::vector<ReadSheet>, std::string> read_xlsx(std::string_view bytes);

/// Does it begin as a packed file, or as a spreadsheet of the old kind? Else it may be text.
bool looks_like_spreadsheet(std::string_view bytes);

/// "AB7": row and column from 0.
std::string cell_name(std::size_t row, std::size_t column);

} // namespace roundlay
