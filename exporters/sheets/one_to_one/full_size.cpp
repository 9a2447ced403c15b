#include "exporters/sheets/one_to_one/full_size.h"

#include "exporters/sheets/drawing/text.h"
#include "kernel/measure/measure.h"

namespace roundlay::sheets {
namespace {

constexpr double margin = 10; ///< most printers leave less than this white
constexpr double footer_height = 7;
constexpr double bars_room = 15; ///< for the pair of bars along the left and the lower side
constexpr double lettering = 2.5;

Text words_at(const std::string &words, Vec2 at, Across across, double turn = 0) {
    Text text = lettered(words, at, lettering, false, Role::note);
    text.across = across;
    text.turn = turn;
    return text;
}

/// One bar with ticks, along x or y, its name beside its middle.
void add_bar(std::vector<Item> &items, Vec2 start, bool upward, double part, int parts,
             const std::string &name) {
    constexpr double tick = 1.5;
    const Vec2 along = upward ? Vec2{0, 1} : Vec2{1, 0}, side = upward ? Vec2{-1, 0} : Vec2{0, 1};
    const auto line = [&](Vec2 a, Vec2 b) { items.emplace_back(Path{{a, b}, false, Line::dimension, ""}); };
    line(start, start + (part * parts) * along);
    for (int i = 0; i <= parts; ++i) {
        const bool end = i == 0 || i == parts;
        const Vec2 at = start + (part * i) * along;
        line(at, at + (end ? 2 : 1) * tick * side);
    }
    const Vec2 label = start + (part * parts + 2) * along;
    items.emplace_back(words_at(name, label, Across::left, upward ? 90 : 0));
}

void add_bars(std::vector<Item> &items, const Rect &frame, const Words &words) {
    const std::string metric = words.say("100 mm"), imperial = words.say("4 in");
    const double y = frame.y0 + footer_height + 2, x = frame.x0 + 5;
    add_bar(items, {frame.x0 + bars_room, y}, false, 10, 10, metric);
    add_bar(items, {frame.x0 + bars_room, y + 5.5}, false, mm_per_inch / 2, 8, imperial);
    add_bar(items, {x, frame.y0 + footer_height + bars_room}, true, 10, 10, metric);
    add_bar(items, {x + 5.5, frame.y0 + footer_height + bars_room}, true, mm_per_inch / 2, 8, imperial);
}

/// A frame round the sheet, and along its foot what it is, of what, and how to print it.
void add_footer(std::vector<Item> &items, const Rect &f, const FullSizeWords &words,
                const std::string &label) {
    items.emplace_back(
        Path{{{f.x0, f.y0}, {f.x1, f.y0}, {f.x1, f.y1}, {f.x0, f.y1}}, true, Line::dimension, ""});
    const double y = f.y0 + footer_height;
    items.emplace_back(Path{{{f.x0, y}, {f.x1, y}}, false, Line::dimension, ""});
    const std::string left = words.title + (label.empty() ? "" : ", " + label);
    const double half = f.width() / 2 - 4;
    items.emplace_back(
        words_at(wrapped(left, half + 20, lettering)[0], {f.x0 + 2, f.y0 + 2.2}, Across::left));
    items.emplace_back(
        words_at(wrapped(words.footer, half - 24, lettering)[0], {f.x1 - 2, f.y0 + 2.2}, Across::right));
    Text scale = words_at(words.words.say("Print at 100 %"), {f.x1 - 2, y + 2.5}, Across::right);
    scale.bold = true;
    items.emplace_back(scale);
}

Rect frame_of(PaperSize size) {
    return Rect{0, 0, size.width, size.height}.grown(-margin);
}

} // namespace

Rect full_size_area(PaperSize size) {
    const Rect frame = frame_of(size);
    return {frame.x0 + bars_room, frame.y0 + footer_height + bars_room, frame.x1 - 1, frame.y1 - 1};
}

Sheet full_size_sheet(PaperSize size, const FullSizeWords &words, const std::string &label) {
    Sheet sheet;
    sheet.size = size;
    sheet.drawing = frame_of(size);
    sheet.title_block = Rect::nothing();
    sheet.title = words.title;
    sheet.chapter = words.chapter;
    add_footer(sheet.items, sheet.drawing, words, label);
    add_bars(sheet.items, sheet.drawing, words.words);
    return sheet;
}

} // namespace roundlay::sheets
