// CSV as rows of cells, before anybody knows what they mean.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

struct CsvRow {
    int line = 0; ///< where it starts, from 1
    std::vector<std::string> cells;
    bool remark = false; ///< begins with #: a comment, unless somebody makes a log of it
};

struct CsvRows {
    std::vector<CsvRow> rows;
    int unclosed = 0; ///< line of a quote that is never closed; 0 = none
};

/// Splits by RFC 4180. Rows without anything in them are left out.
CsvRows split_csv(std::string_view text, char separator);

/// Without blanks at either side; a no-break space is one.
std::string trimmed(std::string_view text);

} // namespace roundlay
