// Lines and columns of a text.
#pragma once

#include "kernel/document/problem.h"

#include <cstddef>
#include <string_view>
#include <vector>

namespace roundlay {

/// Converts between byte offsets and lines and columns. Lines end at LF; a byte order mark is no column.
/// Keeps a view of the text.
class Lines {
  public:
    explicit Lines(std::string_view text);

    Place place_at(std::size_t offset) const;
    /// The byte where a character stands; the end of the line where the column lies behind it.
    std::size_t offset_of(std::size_t line, std::size_t column) const;

    std::size_t line_start(std::size_t offset) const; ///< of the line that the byte stands in
    std::size_t line_end(std::size_t offset) const;   ///< behind its line break, or the end of the text

  private:
    std::size_t index_of_line(std::size_t offset) const;

    std::string_view text_;
    std::vector<std::size_t> starts_;
};

inline constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";

} // namespace roundlay
