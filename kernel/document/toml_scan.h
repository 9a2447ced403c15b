// The few things about the text of TOML that the parser does not tell: where a value ends, how deep a name
// nests. Everything here takes any bytes; on text that is not TOML the answers mean nothing but are safe.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace roundlay {

/// Behind the string whose opening quote stands at `begin` (all four kinds). An unclosed one ends with its
/// line, an unclosed one of many lines with the text.
std::size_t string_end(std::string_view text, std::size_t begin);

/// Behind the value that starts at `begin`: a string, list, inline table, number, date or word.
std::size_t value_end(std::string_view text, std::size_t begin);

/// Behind blanks and tabs.
std::size_t behind_blanks(std::string_view text, std::size_t begin);

/// Behind blanks, line breaks and comments.
std::size_t behind_blanks_and_comments(std::string_view text, std::size_t begin);

/// What a parser without such bounds would run out of stack or time on.
struct TooMuch {
    std::size_t at = 0;
    bool deep = false; ///< a dotted name has too many parts; else there are too many brackets and dots in all
};
std::optional<TooMuch> find_too_much(std::string_view text);

} // namespace roundlay
