#include "exporters/part21/utf8.h"

namespace roundlay::utf8 {

namespace {

constexpr char32_t replacement = 0xFFFD;

struct Lead {
    int following = -1; ///< -1: this byte starts nothing
    char32_t bits = 0;
    char32_t least = 0; ///< smaller values have a shorter spelling and are refused
};

Lead lead_of(unsigned char byte) {
    if (byte < 0x80) return {0, byte, 0};
    if (byte >= 0xC2 && byte <= 0xDF) return {1, char32_t(byte & 0x1F), 0x80};
    if (byte >= 0xE0 && byte <= 0xEF) return {2, char32_t(byte & 0x0F), 0x800};
    if (byte >= 0xF0 && byte <= 0xF4) return {3, char32_t(byte & 0x07), 0x10000};
    return {};
}

bool is_character(char32_t c) {
    return c <= 0x10FFFF && !(c >= 0xD800 && c <= 0xDFFF);
}

} // namespace

std::u32string characters(std::string_view bytes) {
    std::u32string all;
    for (std::size_t i = 0; i < bytes.size();) {
        const Lead lead = lead_of(static_cast<unsigned char>(bytes[i]));
        char32_t c = lead.bits;
        int read = 0;
        while (read < lead.following && i + 1 + static_cast<std::size_t>(read) < bytes.size()) {
            const auto next = static_cast<unsigned char>(bytes[i + 1 + static_cast<std::size_t>(read)]);
            if ((next & 0xC0) != 0x80) break;
            c = (c << 6) | (next & 0x3F);
            ++read;
        }
        const bool whole =
            lead.following >= 0 && read == lead.following && c >= lead.least && is_character(c);
        i += whole ? static_cast<std::size_t>(read) + 1 : 1;
        if (!whole) c = replacement;
        all += (c < 0x20 || c == 0x7F) ? U' ' : c;
    }
    return all;
}

std::string bytes(std::u32string_view characters) {
    std::string all;
    const auto tail = [&](char32_t c, int shift) { all += static_cast<char>(0x80 | ((c >> shift) & 0x3F)); };
    for (const char32_t c : characters) {
        if (c < 0x80) {
            all += static_cast<char>(c);
        } else if (c < 0x800) {
            all += static_cast<char>(0xC0 | (c >> 6));
            tail(c, 0);
        } else if (c < 0x10000) {
            all += static_cast<char>(0xE0 | (c >> 12));
            tail(c, 6);
            tail(c, 0);
        } else {
            all += static_cast<char>(0xF0 | (c >> 18));
            tail(c, 12);
            tail(c, 6);
            tail(c, 0);
        }
    }
    return all;
}

} // namespace roundlay::utf8
