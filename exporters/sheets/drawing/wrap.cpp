#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/text.h"
#include "kernel/measure/character.h"

namespace roundlay::sheets {
namespace {

struct Wrapper {
    double width, height;
    bool bold;
    std::vector<std::string> lines{std::string()};

    bool fits(const std::string &line) const { return text_width(line, height, bold) <= width; }

    void add(const std::string &word) {
        std::string &line = lines.back();
        const std::string longer = line.empty() ? word : line + " " + word;
        if (fits(longer)) {
            line = longer;
            return;
        }
        if (!line.empty()) lines.emplace_back();
        fits(word) ? void(lines.back() = word) : add_in_parts(word);
    }

    /// Broken behind a hyphen or a slash where there is one on the line, else between any two letters.
    void add_in_parts(const std::string &word) {
        for (const Letter &letter : letters_of(word)) {
            std::string &line = lines.back();
            if (line.empty() || fits(line + letter.bytes)) {
                line += letter.bytes;
                continue;
            }
            const std::size_t joint = line.find_last_of("-/");
            std::string rest = joint == std::string::npos ? "" : line.substr(joint + 1);
            line.resize(line.size() - rest.size());
            lines.push_back(rest + letter.bytes);
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

/// Up to the next space at which a line may end.
std::size_t end_of_word(std::string_view words) {
    std::size_t space = words.find(' ');
    while (space != std::string_view::npos && within_length(words, space))
        space = words.find(' ', space + 1);
    return space;
}

} // namespace

std::vector<std::string> wrapped(std::string_view words, double width, double height, bool bold) {
    Wrapper wrapper{width, height, bold};
    while (!words.empty()) {
        const std::size_t space = end_of_word(words);
        const std::string_view word = words.substr(0, space);
        if (!word.empty()) wrapper.add(std::string(word));
        words.remove_prefix(space == std::string_view::npos ? words.size() : space + 1);
    }
    return wrapper.lines;
}

} // namespace roundlay::sheets
