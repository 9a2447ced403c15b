#include "exporters/sheets/drawing/text.h"

#include "exporters/sheets/drawing/font.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace roundlay::sheets {
namespace {

Font font_of(bool bold) {
    return bold ? Font::bold : Font::regular;
}

struct Turn {
    double c, s;
    Vec2 operator()(Vec2 p) const { return {c * p.x - s * p.y, s * p.x + c * p.y}; }
};

/// Quarters are exact, so that upright boxes stay what they are.
Turn turn_by(double degrees) {
    const double quarters = degrees / 90;
    if (quarters == std::floor(quarters)) {
        constexpr std::array<Turn, 4> exact{{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}};
        const int q = static_cast<int>(std::fmod(quarters, 4));
        return exact[static_cast<std::size_t>((q + 4) % 4)];
    }
    const double a = degrees * std::numbers::pi / 180;
    return {std::cos(a), std::sin(a)};
}

/// From the text's position to the start of its baseline, before turning.
Vec2 offset(const Text &text, double width) {
    const double dx = text.across == Across::left ? 0 : text.across == Across::middle ? -width / 2 : -width;
    const double dy = text.upright == Upright::baseline ? 0
                      : text.upright == Upright::middle ? -text.height / 2
                                                        : -text.height;
    return {dx, dy};
}

} // namespace

double em_of(double height, bool bold) {
    return height / capital_height(font_of(bold));
}

Text lettered(std::string words, Vec2 at, double height, bool bold, Role role) {
    Text text;
    text.words = std::move(words);
    text.at = at;
    text.height = height;
    text.bold = bold;
    text.role = role;
    return text;
}

double text_width(std::string_view words, double height, bool bold) {
    return advance_of(font_of(bold), words) * em_of(height, bold);
}

Vec2 start_of(const Text &text) {
    const double width = text_width(text.words, text.height, text.bold);
    return text.at + turn_by(text.turn)(offset(text, width));
}

Rect box_of(const Text &text) {
    const double em = em_of(text.height, text.bold);
    double low = 0, high = text.height;
    for (std::string_view rest = text.words; !rest.empty();) {
        const Glyph &g = glyph_of(font_of(text.bold), next_letter(rest).code);
        if (g.left > g.right) continue;
        low = std::min(low, g.bottom * em);
        high = std::max(high, g.top * em);
    }
    const double width = text_width(text.words, text.height, text.bold);
    const Turn turn = turn_by(text.turn);
    const Vec2 start = text.at + turn(offset(text, width));
    Rect box = Rect::nothing();
    for (const Vec2 corner : {Vec2{0, low}, Vec2{width, low}, Vec2{width, high}, Vec2{0, high}})
        box = joined(box, start + turn(corner));
    return box;
}

} // namespace roundlay::sheets
