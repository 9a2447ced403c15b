#include "exporters/sheets/form/form_pen.h"

#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double small = least_lettering, noted_height = 3.5, large_height = 4.5;
constexpr double baseline = 0.95; ///< over the lower edge of a printed line: letters hang down that far
constexpr double letter_room = 4; ///< of the letter in a box's corner
constexpr double tick_side = 2.7;
constexpr double after_tick = 1.2, between_ticks = 2.2;

Path outline(const Rect &box, const char *layer) {
    return {{{box.x0, box.y0}, {box.x1, box.y0}, {box.x1, box.y1}, {box.x0, box.y1}},
            true,
            Line::dimension,
            layer};
}

Text one_line(const Rect &box, const std::string &words, double height) {
    return lettered(words, {box.x0, box.y0 + (box.height() - height) / 2}, height, false, Role::cell);
}

/// Letters that the font lacks would be drawn as a sign that is taller than a line.
std::string printable(const std::string &words) {
    std::string kept;
    for (const Letter &letter : letters_of(words))
        kept += glyph_of(Font::regular, letter.code).stands_in ? "?" : std::string(letter.bytes);
    return kept;
}

double width_of_row(const std::vector<FormPen::Tick> &row) {
    double width = 0;
    for (const FormPen::Tick &tick : row)
        width += tick_side + after_tick + text_width(tick.words, small) + between_ticks;
    return width;
}

} // namespace

std::string shortened(const std::string &words, double width, double height, bool bold) {
    const std::string whole = printable(words);
    if (text_width(whole, height, bold) <= width) return whole;
    std::string kept;
    for (const Letter &letter : letters_of(whole)) {
        const std::string more = kept + std::string(letter.bytes);
        if (text_width(more + "…", height, bold) > width) break;
        kept = more;
    }
    return kept.empty() ? "" : kept + "…";
}

Known known(const NotedLength &noted, const std::optional<double> &by_rule, const Words &words) {
    if (!noted.is_taken()) return {"", by_rule ? words.length(*by_rule) : ""};
    switch (noted.certainty) {
    case Certainty::measured:
        return {noted.written, ""};
    case Certainty::proposed:
        return {"", noted.written};
    case Certainty::contradicted:
        return {"", "≠ " + noted.written};
    }
    return {};
}

Known known(const NotedLength *noted, const std::optional<double> &by_rule, const Words &words) {
    return known(noted ? *noted : NotedLength{}, by_rule, words);
}

void FormPen::print(Vec2 at, double width, const std::string &words, bool bold) {
    const std::string fits = shortened(words, width, small, bold);
    if (!fits.empty()) items_.emplace_back(lettered(fits, {at.x, at.y + baseline}, small, bold, Role::cell));
}

void FormPen::print_right(Vec2 at, double width, const std::string &words) {
    Text text = lettered(shortened(words, width, small), {at.x, at.y + baseline}, small, false, Role::cell);
    text.across = Across::right;
    if (!text.words.empty()) items_.emplace_back(text);
}

void FormPen::large(Vec2 at, const std::string &words) {
    items_.emplace_back(lettered(printable(words), {at.x, at.y + 1.2}, large_height, true, Role::cell));
}

double FormPen::paragraph(Vec2 at, double width, const std::string &words, bool bold) {
    double y = at.y;
    for (const std::string &line : wrapped(printable(words), width, small, bold))
        print({at.x, y -= print_line}, width, line, bold);
    return at.y - y;
}

std::size_t FormPen::lines_over(const Words &words, const std::string &tag, double width, double row_width) {
    if (wrapped(printable(tag), width, small, true).size() < 3) return 0;
    return wrapped(printable(words.say("tag: %1", tag)), row_width, small, true).size();
}

Rect FormPen::tag(const Rect &row, double width, const std::string &tag) {
    Rect rest = row;
    if (lines_over(words_, tag, width, row.width()) > 0) {
        rest.y1 -= paragraph({row.x0, row.y1}, row.width(), words_.say("tag: %1", tag), true);
        print({rest.x0, rest.y1 - print_line}, width, tag, true);
    } else if (text_width(printable(tag), large_height, true) <= width) {
        large({rest.x0, rest.y1 - box_height + 0.4}, tag);
    } else {
        paragraph({rest.x0, rest.y1}, width, tag, true);
    }
    return rest;
}

void FormPen::box(const Rect &box, const char *layer, const std::string &letter, const Known &known) {
    items_.emplace_back(outline(box, layer));
    double left = box.x0 + 1;
    if (!letter.empty()) {
        items_.emplace_back(lettered(letter, {left, box.y1 - small - 0.9}, small, true, Role::mark));
        left = box.x0 + letter_room;
    }
    if (!known.noted.empty()) noted({left, box.y0, box.x1 - 0.8, box.y1}, known.noted);
    if (!known.proposed.empty())
        print({box.x0 + 1, box.y0 - print_line - off_the_line}, box.width() - 1.6, known.proposed);
}

/// As large as it fits; what does not fit two small lines is cut short.
void FormPen::noted(const Rect &box, const std::string &words) {
    for (const double height : {noted_height, 3.0, small})
        if (put({one_line(box, printable(words), height)}, box)) return;
    std::vector<std::string> lines = wrapped(printable(words), box.width(), small);
    for (std::size_t i = 2; i < lines.size(); ++i)
        lines[1] += " " + lines[i];
    lines.resize(2);
    const double low = box.y0 + box.height() / 2 - print_line + baseline;
    std::vector<Text> both;
    for (const int i : {0, 1})
        both.push_back(lettered(shortened(lines[static_cast<std::size_t>(i)], box.width(), small),
                                {box.x0, low + (1 - i) * (print_line - 0.1)}, small, false, Role::cell));
    if (put(both, box)) return;
    items_.emplace_back(one_line(box, shortened(words, box.width(), small), small));
}

/// Nothing where they stick out of the box or into one another.
bool FormPen::put(const std::vector<Text> &texts, const Rect &box) {
    constexpr double air = 0.05;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const Rect ink = box_of(texts[i]);
        if (ink.x1 > box.x1 || ink.y0 < box.y0 + air || ink.y1 > box.y1 - air) return false;
        if (i > 0 && box_of(texts[i]).overlaps(box_of(texts[i - 1]))) return false;
    }
    for (const Text &text : texts)
        items_.emplace_back(text);
    return true;
}

void FormPen::ticks(const Rect &room, const std::vector<std::vector<Tick>> &rows) {
    const double tall = static_cast<double>(rows.size()) * print_line;
    double y = room.y0 + (room.height() + tall) / 2;
    for (const auto &row : rows) {
        y -= print_line;
        double x = room.x0;
        for (const Tick &tick : row) {
            const double rest = room.x1 - x - tick_side - after_tick;
            const Rect square{x, y + 0.5, x + tick_side, y + 0.5 + tick_side};
            items_.emplace_back(outline(square, tick_box));
            if (tick.ticked) {
                line({square.x0, square.y0}, {square.x1, square.y1}, Line::strong);
                line({square.x0, square.y1}, {square.x1, square.y0}, Line::strong);
            }
            const std::string words = shortened(tick.words, rest, small);
            print({square.x1 + after_tick, y}, rest, words);
            x = square.x1 + after_tick + text_width(words, small) + between_ticks;
        }
    }
}

double FormPen::width_of(const std::vector<std::vector<Tick>> &rows) {
    double width = 0;
    for (const auto &row : rows)
        width = std::max(width, width_of_row(row));
    return width;
}

void FormPen::line(Vec2 from, Vec2 to, Line kind) {
    items_.emplace_back(Path{{from, to}, false, kind, ""});
}

} // namespace roundlay::sheets
