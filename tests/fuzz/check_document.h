// What must hold for any bytes whatever that are given out as a document.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace roundlay::test {

/// Reads the bytes, writes what was read, and edits them. What broke a promise, in words; nothing if none
/// did. A crash, a hang or a sanitizer's report is the other way to fail.
std::optional<std::string> broken_promise(std::string_view bytes);

/// No control characters, no bytes that are no characters.
bool is_one_printed_line(std::string_view text);

} // namespace roundlay::test
