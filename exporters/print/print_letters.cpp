#include "exporters/print/print_letters.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace roundlay {

namespace {

constexpr int wide = 5, air = 1;

struct DotLetter {
    char letter;
    std::array<unsigned char, letter_dots> rows; ///< from the top; the highest of five bits is at the left
};

constexpr DotLetter letters[] = {{'A', {0b01110, 0b10001, 0b10001, 0b11111, 0b10001, 0b10001, 0b10001}},
                                 {'B', {0b11110, 0b10001, 0b10001, 0b11110, 0b10001, 0b10001, 0b11110}},
                                 {'C', {0b01111, 0b11000, 0b10000, 0b10000, 0b10000, 0b11000, 0b01111}},
                                 {'D', {0b11110, 0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b11110}},
                                 {'E', {0b11111, 0b10000, 0b10000, 0b11110, 0b10000, 0b10000, 0b11111}},
                                 {'F', {0b11111, 0b10000, 0b10000, 0b11110, 0b10000, 0b10000, 0b10000}},
                                 {'G', {0b01111, 0b10000, 0b10000, 0b10011, 0b10001, 0b10001, 0b01111}},
                                 {'H', {0b10001, 0b10001, 0b10001, 0b11111, 0b10001, 0b10001, 0b10001}},
                                 {'I', {0b11111, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100, 0b11111}},
                                 {'J', {0b00111, 0b00010, 0b00010, 0b00010, 0b00010, 0b10010, 0b01110}},
                                 {'K', {0b10001, 0b10010, 0b10100, 0b11000, 0b10100, 0b10010, 0b10001}},
                                 {'L', {0b10000, 0b10000, 0b10000, 0b10000, 0b10000, 0b10000, 0b11111}},
                                 {'M', {0b10001, 0b11011, 0b10101, 0b10101, 0b10001, 0b10001, 0b10001}},
                                 {'N', {0b10001, 0b11001, 0b11001, 0b10101, 0b10011, 0b10011, 0b10001}},
                                 {'O', {0b01110, 0b11011, 0b10001, 0b10001, 0b10001, 0b11011, 0b01110}},
                                 {'P', {0b11110, 0b10001, 0b10001, 0b11110, 0b10000, 0b10000, 0b10000}},
                                 {'Q', {0b01110, 0b10001, 0b10001, 0b10001, 0b10101, 0b10011, 0b01111}},
                                 {'R', {0b11110, 0b10001, 0b10001, 0b11110, 0b10100, 0b10010, 0b10001}},
                                 {'S', {0b01111, 0b10000, 0b10000, 0b01110, 0b00001, 0b00001, 0b11110}},
                                 {'T', {0b11111, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100}},
                                 {'U', {0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b01110}},
                                 {'V', {0b10001, 0b10001, 0b10001, 0b10001, 0b01010, 0b01010, 0b00100}},
                                 {'W', {0b10001, 0b10001, 0b10001, 0b10101, 0b10101, 0b11011, 0b10001}},
                                 {'X', {0b10001, 0b10001, 0b01010, 0b00100, 0b01010, 0b10001, 0b10001}},
                                 {'Y', {0b10001, 0b10001, 0b01010, 0b00100, 0b00100, 0b00100, 0b00100}},
                                 {'Z', {0b11111, 0b00001, 0b00010, 0b00100, 0b01000, 0b10000, 0b11111}},
                                 {'0', {0b11111, 0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b11111}},
                                 {'1', {0b00100, 0b01100, 0b00100, 0b00100, 0b00100, 0b00100, 0b01110}},
                                 {'2', {0b01110, 0b10001, 0b00001, 0b00110, 0b01000, 0b10000, 0b11111}},
                                 {'3', {0b11110, 0b00001, 0b00001, 0b01110, 0b00001, 0b00001, 0b11110}},
                                 {'4', {0b00010, 0b00110, 0b01010, 0b10010, 0b11111, 0b00010, 0b00010}},
                                 {'5', {0b11111, 0b10000, 0b11110, 0b00001, 0b00001, 0b10001, 0b01110}},
                                 {'6', {0b01110, 0b10000, 0b10000, 0b11110, 0b10001, 0b10001, 0b01110}},
                                 {'7', {0b11111, 0b00001, 0b00010, 0b00100, 0b00100, 0b00100, 0b00100}},
                                 {'8', {0b01110, 0b10001, 0b10001, 0b01110, 0b10001, 0b10001, 0b01110}},
                                 {'9', {0b01110, 0b10001, 0b10001, 0b01111, 0b00001, 0b00001, 0b01110}},
                                 {'-', {0b00000, 0b00000, 0b00000, 0b01110, 0b00000, 0b00000, 0b00000}},
                                 {'.', {0b00000, 0b00000, 0b00000, 0b00000, 0b00000, 0b01100, 0b01100}},
                                 {'_', {0b00000, 0b00000, 0b00000, 0b00000, 0b00000, 0b00000, 0b11111}},
                                 {'/', {0b00001, 0b00001, 0b00010, 0b00100, 0b01000, 0b10000, 0b10000}},
                                 {'+', {0b00000, 0b00100, 0b00100, 0b11111, 0b00100, 0b00100, 0b00000}},
                                 {' ', {0b00000, 0b00000, 0b00000, 0b00000, 0b00000, 0b00000, 0b00000}}};

const DotLetter *letter_for(char sign) {
    const char capital = static_cast<char>(std::toupper(static_cast<unsigned char>(sign)));
    const auto *found = std::ranges::find(letters, capital, &DotLetter::letter);
    return found == std::end(letters) ? nullptr : found;
}

/// Rows of dots, from the top.
class Dots {
  public:
    explicit Dots(std::string_view text)
        : width_(dots_wide(text)), on_(static_cast<std::size_t>(width_ * letter_dots)) {}

    bool at(int x, int y) const { return on_[index(x, y)]; }
    void set(int x, int y, bool on) { on_[index(x, y)] = on; }

    /// Dots that meet in a corner alone would leave wood that hangs together by a line: one beside is put on.
    void fill_corners() {
        for (bool again = true; again;) {
            again = false;
            for (int y = 0; y + 1 < letter_dots; ++y)
                for (int x = 0; x + 1 < width_; ++x) {
                    const bool a = at(x, y), b = at(x + 1, y), c = at(x, y + 1), d = at(x + 1, y + 1);
                    if (a == b || a != d || b != c) continue;
                    set(a ? x + 1 : x, y, true), again = true;
                }
        }
    }

    /// Takes the largest box that begins at the first dot, row by row, until none is left.
    std::vector<DotBox> boxes() {
        std::vector<DotBox> all;
        for (int y = 0; y < letter_dots; ++y)
            for (int x = 0; x < width_; ++x)
                if (at(x, y)) all.push_back(taken_at(x, y));
        return all;
    }

  private:
    std::size_t index(int x, int y) const { return static_cast<std::size_t>(y * width_ + x); }

    bool row_on(int x0, int x1, int y) const {
        for (int x = x0; x < x1; ++x)
            if (!at(x, y)) return false;
        return true;
    }

    DotBox taken_at(int x, int y) {
        DotBox right{x, y, x + 1, y + 1}, down = right;
        while (right.x1 < width_ && at(right.x1, y))
            ++right.x1;
        while (right.y1 < letter_dots && row_on(x, right.x1, right.y1))
            ++right.y1;
        while (down.y1 < letter_dots && at(x, down.y1))
            ++down.y1;
        const auto size = [](const DotBox &box) { return (box.x1 - box.x0) * (box.y1 - box.y0); };
        const DotBox box = size(right) >= size(down) ? right : down;
        for (int v = box.y0; v < box.y1; ++v)
            for (int u = box.x0; u < box.x1; ++u)
                set(u, v, false);
        return box;
    }

    int width_;
    std::vector<bool> on_;
};

} // namespace

int dots_wide(std::string_view text) {
    return std::max(0, static_cast<int>(text.size()) * (wide + air) - air);
}

std::optional<std::vector<DotBox>> dotted(std::string_view text) {
    Dots dots(text);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const DotLetter *letter = letter_for(text[i]);
        if (letter == nullptr) return {};
        for (int y = 0; y < letter_dots; ++y)
            for (int x = 0; x < wide; ++x)
                if (letter->rows[static_cast<std::size_t>(y)] >> (wide - 1 - x) & 1U)
                    dots.set(static_cast<int>(i) * (wide + air) + x, y, true);
    }
    dots.fill_corners();
    return dots.boxes();
}

} // namespace roundlay
