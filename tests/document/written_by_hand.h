// Random documents as people write them: every kind of value, blanks, comments and line breaks of all sorts.
// What an edit must give is known here without the code under test: the text is put together from its parts.
#pragma once

#include <string>
#include <vector>

namespace roundlay::test {

struct HandLine {
    std::string indent, key, before_equals, behind_equals, value, remark;
};

struct HandTable {
    std::string above;  ///< blank lines and comments over the header
    std::string header; ///< `[shell]`; empty for the statements at the top
    std::string path;   ///< `wall[1]`; empty for the statements at the top
    std::string header_remark;
    std::vector<HandLine> lines;
    std::vector<std::string> between; ///< a comment or blank line behind each statement; may be empty
};

struct HandDocument {
    bool order_mark = false;
    bool last_break = true; ///< the last line ends with a line break
    std::string line_break = "\n";
    std::vector<HandTable> tables;
    std::string below; ///< comments at the end

    std::string text() const;
};

/// Inside a rapidcheck property. Always TOML; seldom a shell.
HandDocument any_hand_document();

std::string path_of(const HandTable &table, const HandLine &line);

} // namespace roundlay::test
