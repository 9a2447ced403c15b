// The cells of an XLSX file as text, and what stands in their way.
//
// Numbers come as the shortest decimal that means them; rich text without its looks. Formulas are not worked
// out, and what a spreadsheet has turned into a date is not turned back: both are told, with their cell, and
// the cell is empty here.
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

struct ReadSheet {
    std::string name;
    CsvRows rows; ///< `line` is the sheet's row; rows without anything in them are left out
    std::vector<SheetRemark> remarks; ///< cells whose content is not taken, and merged ones
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
