// UTF-8, one character at a time.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace roundlay {

inline bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// With A to Z as a to z, and all else as it is.
inline std::string lower_case(std::string text) {
    for (char &c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

/// In lower case, and the accented letters of French without their accents: what people write both ways.
std::string plain_letters(std::string_view text);

/// Length in bytes of the well-formed character at the front of the text; 0 where there is none
/// (empty, cut short, overlong, surrogate, over U+10FFFF). Table 3-7 of the Unicode Standard.
std::size_t character_length(std::string_view text);

/// `byte 0xC3`, for messages about what is no text.
std::string byte_in_words(char byte);

} // namespace roundlay
