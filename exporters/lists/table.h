// A list as plain values, and its three spellings: CSV for spreadsheets, JSON for machines, aligned text
// for a terminal. Numbers for machines are always spelled with a decimal point, whatever the machine's
// language.
#pragma once

#include "exporters/words/speech.h"

#include <string>
#include <variant>
#include <vector>

namespace roundlay {

/// A number as it is to be printed: digits, one point, a sign, nothing else.
struct Number {
    std::string digits;
    std::string shown = {}; ///< on a terminal, where that is fewer digits; empty = all
    bool operator==(const Number &) const = default;
};

/// At most so many digits after the point, none that say nothing: 8.50 -> 8.5, 8.00 -> 8, -0 -> 0.
Number number(double value, int decimals);

/// With enough digits for sums of many, of which a person is shown fewer.
Number number(double value, int decimals, int shown_decimals);

using Entry = std::variant<std::string, Number, std::vector<std::string>>;

struct Column {
    std::string key;   ///< for files and machines: lower case with underscores
    std::string title; ///< for people; empty = not shown on a terminal
};

struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<Entry>> rows; ///< each as long as columns
    /// Of rows whose amounts stand in another row, and are left out of it: no sum misses them.
    std::vector<std::size_t> in_others = {};
};

/// RFC 4180: a header of the keys, CRLF ends every line, quotes where needed. UTF-8 without a mark. Lists
/// are joined with a blank.
std::string to_csv(const Table &table);

/// An array of objects in the order of the columns; lists are arrays. Ends with a line end.
std::string to_json(const Table &table);

/// Columns with a title, aligned; numbers to the right. A list shows its first entry and how many follow.
/// Every line ends with "\n" and holds no blanks at its end. Numbers have the decimal mark of that language.
std::string to_text(const Table &table, Language language = Language::english);

} // namespace roundlay
