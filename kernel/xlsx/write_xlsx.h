// Tables as the sheets of an XLSX file.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace roundlay {

struct SheetColumn {
    std::string name;
    double width = 12;    ///< of so many digits
    bool numbers = false; ///< what reads as a decimal number is one; else all cells are text, so that no
                          ///< spreadsheet makes a date of 3.10 or a fraction of 3/4
    /// Added up by a formula under the rows, of those that a filter leaves in sight; only where every row has
    /// a number, but for those of SheetTable::in_others: a sum that leaves one out is too low.
    bool summed = false;
    std::optional<std::size_t> times = std::nullopt; ///< the same, each times the number in that column
};

/// Words that are offered in some cells of one column. Any other word may be typed: a hand is warned, not
/// hindered.
struct SheetChoice {
    std::size_t column = 0, first_row = 0, last_row = 0; ///< under the header, from 0
    std::vector<std::string> words;
};

struct SheetTable {
    std::string name; ///< up to 31 characters, without : \ / ? * [ ]
    std::vector<SheetColumn> columns;
    std::vector<std::vector<std::string>> rows; ///< no more cells than columns; an empty one stays empty
    std::size_t stays = 0;              ///< columns at the left that stay in sight, as the header does
    std::size_t room = 0;               ///< rows under the last one that are to be filled in
    bool filter = false;                ///< buttons in the header that choose among rows
    std::string total;                  ///< stands before the sums, in the first column
    std::string note;                   ///< under the sums, where there are any
    std::vector<std::size_t> in_others; ///< rows whose amounts stand in another one
    std::vector<SheetChoice> choices;
};

/// The bytes of the file, the same for the same tables and time. Throws std::runtime_error where it cannot be
/// made: no room for a temporary file, or a table larger than a sheet.
std::string xlsx_of(const std::vector<SheetTable> &sheets, const std::string &title,
                    std::int64_t seconds_since_1970);

} // namespace roundlay
