#include "kernel/measure/character.h"

#include <array>

namespace roundlay {

namespace {

/// One row of Table 3-7: the lead bytes, the range of the second byte, the length.
struct WellFormed {
    unsigned char lead_from, lead_to, second_from, second_to;
    std::size_t length;
};
constexpr std::array<WellFormed, 9> well_formed{{{0x00, 0x7f, 0x00, 0xff, 1},
                                                 {0xc2, 0xdf, 0x80, 0xbf, 2},
                                                 {0xe0, 0xe0, 0xa0, 0xbf, 3},
                                                 {0xe1, 0xec, 0x80, 0xbf, 3},
                                                 {0xed, 0xed, 0x80, 0x9f, 3},
                                                 {0xee, 0xef, 0x80, 0xbf, 3},
                                                 {0xf0, 0xf0, 0x90, 0xbf, 4},
                                                 {0xf1, 0xf3, 0x80, 0xbf, 4},
                                                 {0xf4, 0xf4, 0x80, 0x8f, 4}}};

unsigned char byte_at(std::string_view text, std::size_t i) {
    return static_cast<unsigned char>(text[i]);
}

bool fits(std::string_view text, const WellFormed &row) {
    if (text.size() < row.length) return false;
    if (row.length > 1 && (byte_at(text, 1) < row.second_from || byte_at(text, 1) > row.second_to))
        return false;
    for (std::size_t i = 2; i < row.length; ++i)
        if ((byte_at(text, i) & 0xc0) != 0x80) return false;
    return true;
}

/// Of an accented letter between U+00C0 and U+00FF, the one it is; else none.
char without_accent(unsigned char second) {
    // Each stands once in capitals and, 0x20 behind, once in small letters.
    constexpr std::string_view letters = "aaaaaa.ceeeeiiii.nooooo..uuuuy..";
    constexpr unsigned char first = 0x80;
    const char letter = letters[(second - first) % letters.size()];
    return letter == '.' ? '\0' : letter;
}

} // namespace

std::string plain_letters(std::string_view text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool latin = byte_at(text, i) == 0xc3 && character_length(text.substr(i)) == 2;
        if (const char letter = latin ? without_accent(byte_at(text, i + 1)) : '\0')
            plain += letter, ++i;
        else
            plain += text[i];
    }
    return lower_case(std::move(plain));
}

std::size_t character_length(std::string_view text) {
    if (text.empty()) return 0;
    for (const WellFormed &row : well_formed)
        if (byte_at(text, 0) >= row.lead_from && byte_at(text, 0) <= row.lead_to)
            return fits(text, row) ? row.length : 0;
    return 0;
}

std::string byte_in_words(char byte) {
    constexpr std::string_view hex = "0123456789ABCDEF";
    const auto v = static_cast<unsigned char>(byte);
    return std::string("byte 0x") + hex[v >> 4] + hex[v & 15];
}

} // namespace roundlay
