// How a table lies in the text, and where an edit in it goes.
#pragma once

#include "kernel/document/parsed_text.h"

#include <optional>
#include <string>

namespace roundlay {

/// A stretch of text.
struct Stretch {
    std::size_t begin = 0, end = 0;
};

/// One `key = value` in the text.
struct Statement {
    std::size_t key = 0;   ///< where the last part of its key begins
    std::size_t value = 0; ///< where its value begins
    std::size_t value_end = 0;
};

bool is_under_header(const ParsedText &text, const toml::table &table); ///< written as [name] or [[name]]
bool is_header_list(const toml::node &node);                            ///< entries written as [[name]]

/// The statement of a table that stands last in the text. Those of tables with their own header do not count;
/// those of dotted keys do, unless only the table's own keys are asked for.
std::optional<Statement> last_statement(const ParsedText &text, const toml::table &table,
                                        bool own_keys = false);

/// The lines of a table with a header: from the header to the last statement in it, also of tables inside it.
Stretch block_of(const ParsedText &text, const toml::table &table);

/// The line break of the line that the byte stands in, else of the first line; LF where there is none at all.
std::string line_break_at(const ParsedText &text, std::size_t offset);

/// A new line `key = value` in the manner of another statement of the table: indent, dotted prefix, blanks
/// and the column of the equals sign.
std::string line_like(const ParsedText &text, const toml::table &table, const Statement &model,
                      const std::string &key, const std::string &value);

} // namespace roundlay
