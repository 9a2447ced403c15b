#include "exporters/sheets/drawing/font.h"

namespace roundlay::sheets {
namespace {

constexpr char32_t broken = 0xFFFD;
constexpr std::string_view broken_bytes = "\xEF\xBF\xBD";
constexpr char32_t highest = 0x10FFFF;

bool is_tail(unsigned char byte) {
    return (byte & 0xC0U) == 0x80U;
}

/// How many bytes a letter takes that starts with this one; 0 = none starts so.
std::size_t length_from(unsigned char lead) {
    if (lead < 0x80U) return 1;
    if (lead >= 0xC2U && lead < 0xE0U) return 2;
    if (lead >= 0xE0U && lead < 0xF0U) return 3;
    if (lead >= 0xF0U && lead < 0xF5U) return 4;
    return 0;
}

/// Shortest form, no surrogates, in range (RFC 3629).
bool is_scalar(char32_t code, std::size_t bytes) {
    constexpr char32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
    return code >= least[bytes] && code <= highest && !(code >= 0xD800 && code <= 0xDFFF);
}

/// Code of the letter of n bytes at the start of the words, or `broken`.
char32_t code_at(std::string_view words, std::size_t n) {
    if (n == 0 || n > words.size()) return broken;
    const auto lead = static_cast<unsigned char>(words[0]);
    if (n == 1) return lead;
    char32_t code = lead & (0xFFU >> (n + 1));
    for (std::size_t i = 1; i < n; ++i) {
        const auto byte = static_cast<unsigned char>(words[i]);
        if (!is_tail(byte)) return broken;
        code = (code << 6U) | (byte & 0x3FU);
    }
    return is_scalar(code, n) ? code : broken;
}

bool is_control(char32_t code) {
    return code < 0x20 || (code >= 0x7F && code < 0xA0);
}

} // namespace

Letter next_letter(std::string_view &words) {
    std::size_t taken = length_from(static_cast<unsigned char>(words[0]));
    const char32_t code = code_at(words, taken);
    Letter letter{code, words.substr(0, taken)};
    if (code == broken) {
        taken = words.substr(0, 3) == broken_bytes ? 3 : 1;
        letter.bytes = broken_bytes;
    } else if (is_control(code)) {
        letter = {U' ', " "};
    }
    words.remove_prefix(taken);
    return letter;
}

std::vector<Letter> letters_of(std::string_view words) {
    std::vector<Letter> letters;
    letters.reserve(words.size());
    while (!words.empty())
        letters.push_back(next_letter(words));
    return letters;
}

} // namespace roundlay::sheets
