#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/text.h"
#include "kernel/measure/character.h"

namespace roundlay::sheets {
namespace {

/// Measures each letter once: of the last line it keeps how far it has come.
struct Wrapper {
    double width, em;
    Font font;
    std::vector<std::string> lines{std::string()};
    double advance = 0; ///< of the last line, in ems

    bool fits(double ems) const { return ems * em <= width; }

    void append(std::string_view words, double ems) {
        lines.back() += words;
        advance = ems;
    }

    void begin_line(std::string_view words) {
        lines.emplace_back(words);
        advance = advance_of(font, words);
    }

    void add(std::string_view word) {
        const bool first = lines.back().empty();
        const double longer = advance_of(font, word, first ? 0 : advance_of(font, " ", advance));
        if (fits(longer)) {
            if (!first) lines.back() += ' ';
            append(word, longer);
            return;
        }
        if (!first) begin_line("");
        const double alone = advance_of(font, word);
        fits(alone) ? append(word, alone) : add_in_parts(word);
    }

    /// Broken behind a hyphen or a slash where there is one on the line, else between any two letters.
    void add_in_parts(std::string_view word) {
        while (!word.empty()) {
            const Letter letter = next_letter(word);
            std::string &line = lines.back();
            const double longer = advance_of(font, letter.bytes, advance);
            if (line.empty() || fits(longer)) {
                append(letter.bytes, longer);
                continue;
            }
            const std::size_t joint = line.find_last_of("-/");
            std::string rest = joint == std::string::npos ? "" : line.substr(joint + 1);
            line.resize(line.size() - rest.size());
            rest += letter.bytes;
            begin_line(rest);
        }
    }
};

/// Whether feet, inches and their fraction are parted by this space: `5 3/16"`, `2' 0"`.
bool within_length(std::string_view words, std::size_t space) {
    if (space == 0 || space + 1 >= words.size() || !is_digit(words[space + 1])) return false;
    if (words[space - 1] == '\'') return true;
    const std::size_t next = words.find_first_not_of("0123456789", space + 1);
    return is_digit(words[space - 1]) && next != std::string_view::npos && words[next] == '/';
}

/// Whether a mark that stands apart from its word in French, or a percent sign, is parted from it by this
/// space: `remplacé : 1`, `« ici »`, `29 %`.
bool beside_mark(std::string_view words, std::size_t space) {
    if (words.substr(0, space).ends_with("«")) return true;
    const std::string_view next = words.substr(space + 1);
    return next.starts_with("»") ||
           (!next.empty() && std::string_view(":;?!%").find(next[0]) != next.npos &&
            (next.size() == 1 || std::string_view(" ,.;:)?!").find(next[1]) != next.npos));
}

/// Up to the next space at which a line may end.
std::size_t end_of_word(std::string_view words) {
    std::size_t space = words.find(' ');
    while (space != std::string_view::npos && (within_length(words, space) || beside_mark(words, space)))
        space = words.find(' ', space + 1);
    return space;
}

} // namespace

std::vector<std::string> wrapped(std::string_view words, double width, double height, bool bold) {
    Wrapper wrapper{width, em_of(height, bold), bold ? Font::bold : Font::regular};
    while (!words.empty()) {
        const std::size_t space = end_of_word(words);
        const std::string_view word = words.substr(0, space);
        if (!word.empty()) wrapper.add(word);
        words.remove_prefix(space == std::string_view::npos ? words.size() : space + 1);
    }
    return wrapper.lines;
}

} // namespace roundlay::sheets
