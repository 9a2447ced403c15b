#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/text.h"

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

    void add_in_parts(const std::string &word) {
        for (const Letter &letter : letters_of(word)) {
            if (!lines.back().empty() && !fits(lines.back() + letter.bytes)) lines.emplace_back();
            lines.back() += letter.bytes;
        }
    }
};

} // namespace

std::vector<std::string> wrapped(std::string_view words, double width, double height, bool bold) {
    Wrapper wrapper{width, height, bold};
    while (!words.empty()) {
        const std::size_t space = words.find(' ');
        const std::string_view word = words.substr(0, space);
        if (!word.empty()) wrapper.add(std::string(word));
        words.remove_prefix(space == std::string_view::npos ? words.size() : space + 1);
    }
    return wrapper.lines;
}

} // namespace roundlay::sheets
