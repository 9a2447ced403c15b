// One value as it is written into a CSV file.
#pragma once

#include <string>
#include <string_view>

namespace roundlay {

/// In quotes where it must be (RFC 4180 section 2.6 and 2.7), or where one of `others` stands in it.
inline std::string csv_field(std::string_view text, std::string_view others = {}) {
    if (text.find_first_of(",\"\r\n") == std::string_view::npos &&
        text.find_first_of(others) == std::string_view::npos)
        return std::string(text);
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + '"';
}

} // namespace roundlay
