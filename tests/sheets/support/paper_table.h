// Tables on paper, read by where their words stand.
#pragma once

#include "tests/sheets/support/paper_words.h"

#include <regex>
#include <string>
#include <vector>

namespace roundlay::test {

struct PaperColumn {
    std::string heading;  ///< its first word
    bool numbers = false; ///< stand at the right of the column
};

/// The cells of all parts of the table of that title, row by row. A row begins with a word of that form in
/// its first column. Empty where there is no such table.
std::vector<std::vector<std::string>> table_rows(const std::vector<PaperWord> &words,
                                                 const std::string &title,
                                                 const std::vector<PaperColumn> &columns,
                                                 const std::regex &first);

/// A length as it is printed, metric or imperial, for use in regular expressions; without groups.
extern const char *const a_length;
double printed_mm(const std::string &length);

} // namespace roundlay::test
