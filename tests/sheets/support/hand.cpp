#include "tests/sheets/support/hand.h"

#include <stdexcept>

namespace roundlay::test {
namespace {

// A digit in a field three wide and five high (0,0 lower left to 2,4), by the strokes of its seven bars:
// top, upper left, upper right, middle, lower left, lower right, bottom.
struct Bar {
    Vec2 from, to;
};
constexpr Bar bars[] = {{{0, 4}, {2, 4}}, {{0, 2}, {0, 4}}, {{2, 2}, {2, 4}}, {{0, 2}, {2, 2}},
                        {{0, 0}, {0, 2}}, {{2, 0}, {2, 2}}, {{0, 0}, {2, 0}}};
constexpr const char *bars_of[] = {"012456", "25",     "02346", "02356",   "1235",
                                   "01356",  "013456", "025",   "0123456", "012356"};

constexpr double digit_width = 0.6, air = 0.2; ///< parts of the height: as hands write, our choice

double width_of(char c) {
    if (c >= '0' && c <= '9') return digit_width;
    if (c == '.' || c == '\'' || c == ',') return 0.15;
    return 0.4; // dash, slash, inch mark, blank
}

void add_sign(std::vector<HandStroke> &strokes, char c, Vec2 at, double height) {
    const auto stroke = [&](double x0, double y0, double x1, double y1) {
        strokes.emplace_back(at + height * Vec2{x0, y0}, at + height * Vec2{x1, y1});
    };
    switch (c) {
    case '.':
    case ',':
        return stroke(0.05, 0, 0.1, 0.05);
    case '\'':
        return stroke(0.1, 0.7, 0.1, 1);
    case '"':
        stroke(0.1, 0.7, 0.1, 1);
        return stroke(0.3, 0.7, 0.3, 1);
    case '-':
        return stroke(0, 0.5, 0.4, 0.5);
    case '/':
        return stroke(0, 0, 0.4, 1);
    case ' ':
        return;
    default:
        throw std::logic_error("no hand writes that figure here");
    }
}

} // namespace

std::vector<HandStroke> written_by_hand(const std::string &figures, Vec2 at, double height) {
    std::vector<HandStroke> strokes;
    for (const char c : figures) {
        if (c >= '0' && c <= '9') {
            for (const char *bar = bars_of[c - '0']; *bar != '\0'; ++bar) {
                const Bar &b = bars[*bar - '0'];
                const auto place = [&](Vec2 p) { return at + height * Vec2{p.x * digit_width / 2, p.y / 4}; };
                strokes.emplace_back(place(b.from), place(b.to));
            }
        } else {
            add_sign(strokes, c, at, height);
        }
        at.x += height * (width_of(c) + air);
    }
    return strokes;
}

} // namespace roundlay::test
