#include "exporters/router/plain_text.h"

#include <array>
#include <utility>

namespace roundlay {

namespace {

constexpr std::size_t longest_line = 74; // without its brackets: some controls show no more than 80

constexpr std::array<std::pair<std::string_view, std::string_view>, 42> likenesses{{
    {"à", "a"},  {"â", "a"},  {"ä", "a"}, {"á", "a"}, {"ã", "a"}, {"å", "a"},      {"æ", "ae"},
    {"ç", "c"},  {"é", "e"},  {"è", "e"}, {"ê", "e"}, {"ë", "e"}, {"í", "i"},      {"î", "i"},
    {"ï", "i"},  {"ñ", "n"},  {"ó", "o"}, {"ô", "o"}, {"ö", "o"}, {"ø", "o"},      {"œ", "oe"},
    {"ù", "u"},  {"û", "u"},  {"ü", "u"}, {"ú", "u"}, {"À", "A"}, {"Ä", "A"},      {"Ç", "C"},
    {"É", "E"},  {"È", "E"},  {"Ê", "E"}, {"Ö", "O"}, {"Ü", "U"}, {"ß", "ss"},     {"’", "'"},
    {"«", "\""}, {"»", "\""}, {"×", "x"}, {"–", "-"}, {"—", "-"}, {"\u00A0", " "}, {"\u202F", " "},
}};

std::string in_ascii(std::string_view text) {
    constexpr unsigned char first_beyond = 0x80, first_printed = 0x20, continues = 0xC0;
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        const auto byte = static_cast<unsigned char>(text[at]);
        if (byte < first_beyond) {
            const char c = text[at++];
            plain += c == '('                           ? '<'
                     : c == ')'                         ? '>'
                     : c == ';'                         ? ','
                     : c == '%' || byte < first_printed ? '-'
                                                        : c;
            continue;
        }
        std::size_t end = at + 1;
        while (end < text.size() && (static_cast<unsigned char>(text[end]) & continues) == first_beyond)
            ++end;
        std::string_view like = "?";
        for (const auto &[letter, likeness] : likenesses)
            if (letter == text.substr(at, end - at)) like = likeness;
        plain += like;
        at = end;
    }
    return plain;
}

} // namespace

std::string as_comment(std::string_view text) {
    std::string lines, rest = in_ascii(text);
    while (!rest.empty()) {
        std::size_t end = rest.size();
        if (end > longest_line) {
            end = rest.rfind(' ', longest_line);
            if (end == std::string::npos || end == 0) end = longest_line;
        }
        lines += "(" + rest.substr(0, end) + ")\n";
        rest.erase(0, end);
        rest.erase(0, rest.find_first_not_of(' '));
    }
    return lines;
}

} // namespace roundlay
