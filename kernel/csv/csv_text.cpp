#include "kernel/csv/csv_text.h"

#include <array>
#include <cstdint>

namespace roundlay {

namespace {

void append(std::string &text, std::uint32_t code) {
    const auto byte = [&](std::uint32_t b) { text += static_cast<char>(b); };
    if (code < 0x80) return byte(code);
    if (code < 0x800) return byte(0xC0 | code >> 6), byte(0x80 | (code & 63));
    if (code < 0x10000)
        return byte(0xE0 | code >> 12), byte(0x80 | (code >> 6 & 63)), byte(0x80 | (code & 63));
    byte(0xF0 | code >> 18), byte(0x80 | (code >> 12 & 63)), byte(0x80 | (code >> 6 & 63)),
        byte(0x80 | (code & 63));
}

std::uint32_t at(std::string_view bytes, std::size_t i) {
    return static_cast<unsigned char>(bytes[i]);
}

/// How many bytes the character there takes; 0 where there is no whole one (RFC 3629).
std::size_t utf8_length(std::string_view bytes, std::size_t i) {
    const std::uint32_t lead = at(bytes, i);
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xC2 ? 0
                               : lead < 0xE0 ? 2
                               : lead < 0xF0 ? 3
                               : lead < 0xF5 ? 4
                                             : 0;
    if (length == 0 || i + length > bytes.size()) return 0;
    for (std::size_t k = 1; k < length; ++k)
        if ((at(bytes, i + k) & 0xC0) != 0x80) return 0;
    const std::uint32_t second = length > 1 ? at(bytes, i + 1) : 0;
    const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
    const bool beyond = (lead == 0xED && second > 0x9F) || (lead == 0xF4 && second > 0x8F);
    return overlong || beyond ? 0 : length;
}

bool is_utf8(std::string_view bytes) {
    for (std::size_t i = 0; i < bytes.size();) {
        const std::size_t length = utf8_length(bytes, i);
        if (length == 0) return false;
        i += length;
    }
    return true;
}

/// Half of a pair that nothing completes gives the sign for a letter that cannot be read.
std::string from_utf16(std::string_view bytes, bool low_first) {
    constexpr std::uint32_t unreadable = 0xFFFD;
    const auto unit = [&](std::size_t i) {
        return low_first ? at(bytes, i) | at(bytes, i + 1) << 8 : at(bytes, i) << 8 | at(bytes, i + 1);
    };
    std::string text;
    for (std::size_t i = 0; i + 1 < bytes.size(); i += 2) {
        std::uint32_t code = unit(i);
        if (code >= 0xD800 && code < 0xDC00 && i + 3 < bytes.size() && unit(i + 2) >> 10 == 0x37) {
            i += 2;
            code = 0x10000 + ((code & 0x3FF) << 10) + (unit(i) & 0x3FF);
        }
        append(text, code >> 11 == 0x1B ? unreadable : code);
    }
    return text;
}

/// The Unicode mapping of code page 1252, 0x80 to 0x9F; the rest of it is Latin-1. From memory.
constexpr std::array<std::uint16_t, 32> upper = {
    0x20AC, 0xFFFD, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0xFFFD, 0x017D, 0xFFFD, 0xFFFD, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0xFFFD, 0x017E, 0x0178};

std::string from_single_bytes(std::string_view bytes) {
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const std::uint32_t byte = at(bytes, i);
        append(text, byte >= 0x80 && byte < 0xA0 ? upper[byte - 0x80] : byte);
    }
    return text;
}

std::string decoded(std::string_view bytes) {
    if (bytes.starts_with("\xff\xfe")) return from_utf16(bytes.substr(2), true);
    if (bytes.starts_with("\xfe\xff")) return from_utf16(bytes.substr(2), false);
    if (bytes.starts_with("\xef\xbb\xbf")) bytes.remove_prefix(3); // spreadsheets put it in front of UTF-8
    return is_utf8(bytes) ? std::string(bytes) : from_single_bytes(bytes);
}

} // namespace

std::optional<std::string> csv_text(std::string_view bytes) {
    const std::string all = decoded(bytes);
    std::string text;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto byte = static_cast<unsigned char>(all[i]);
        if (byte == '\r' && i + 1 < all.size() && all[i + 1] == '\n') continue;
        if ((byte < ' ' && byte != '\n' && byte != '\r' && byte != '\t') || byte == 0x7F) return {};
        text += byte == '\r' ? '\n' : all[i];
    }
    return text;
}

} // namespace roundlay
